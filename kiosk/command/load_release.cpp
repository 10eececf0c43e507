#include "kiosk/command/load_release.h"

#include "catalog/read/gtin_cell.h"
#include "kiosk/desk/load_words.h"
#include "kiosk/desk/release_words.h"
#include "ui/words/error_words.h"

#include <filesystem>
#include <fstream>
#include <ostream>
#include <unistd.h>

namespace kiosk {
namespace {

constexpr std::size_t most_told = 10; // wrong lines: more of them are another kind of file

/// The numbers of a list, one a line.
struct Numbers {
    std::set<core::Gtin> good;
    catalog::Faults faults; ///< lines that hold none
};

Numbers read_numbers(const std::string& path)
{
    Numbers numbers;
    const auto fault = [&](core::Error error, std::size_t row) {
        error.place.source = path;
        error.place.row = row;
        numbers.faults.add(std::move(error));
    };
    std::error_code unknown;
    const bool folder = std::filesystem::is_directory(path, unknown);
    std::ifstream file(path);
    if (folder || !file) {
        fault({folder ? core::Error::Kind::IsFolder : core::Error::Kind::NoSuchFile, "no list", {}}, 0);
        return numbers;
    }
    std::size_t row = 0;
    for (std::string line; std::getline(file, line);) {
        ++row;
        if (row == 1 && line.starts_with("\xEF\xBB\xBF")) // as spreadsheets begin a text in UTF-8
            line.erase(0, 3);
        while (!line.empty() && (line.back() == '\r' || line.back() == ' '))
            line.pop_back();
        if (line.empty())
            continue;
        if (const auto gtin = core::Gtin::parse(line))
            numbers.good.insert(*gtin); // one that no product has is in no release: nothing to tell
        else
            fault(catalog::read_gtin(line).error(), row); // the same sentence as in a sheet
    }
    if (numbers.good.empty() && numbers.faults.empty()) // else an empty list would ask for the whole release
        fault({core::Error::Kind::Empty, "no numbers", {"", 0, "", "", "a product number on each line"}}, 0);
    return numbers;
}

/// The first lines that are wrong, and that nothing was loaded.
void tell_faults(catalog::Faults faults, const std::string& into, const ui::Language& language, std::ostream& err)
{
    for (const auto& words : fault_words(faults, language, most_told))
        err << words << '\n';
    catalog::LoadReport nothing;
    nothing.faults = std::move(faults);
    std::error_code unknown;
    err << loaded_words(nothing, false, into, std::filesystem::exists(into, unknown), language) << '\n';
}

/// Draws the progress over itself on a terminal; says nothing into a file.
class Progress {
public:
    Progress(const ui::Language& language, std::ostream& err)
        : language_(language), err_(err), shown_(::isatty(STDERR_FILENO) != 0), start_(Clock::now())
    {
    }
    bool tell(const catalog::LoadProgress& progress)
    {
        if (shown_)
            err_ << '\r'
                 << progress_words(progress, std::chrono::duration_cast<Milliseconds>(Clock::now() - start_), language_)
                 << "\x1B[K" << std::flush;
        return true;
    }
    void end()
    {
        if (shown_)
            err_ << "\r\x1B[K" << std::flush;
    }

private:
    const ui::Language& language_;
    std::ostream& err_;
    bool shown_;
    TimePoint start_;
};

} // namespace

int load_release(const std::string& source, const LoadArguments& asked, const ui::Language& language, std::ostream& out,
                 std::ostream& err)
{
    catalog::ReleaseLoad wanted;
    wanted.choice.categories = asked.categories;
    wanted.choice.words = asked.words;
    wanted.choice.market = asked.market;
    if (!asked.numbers.empty()) {
        auto numbers = read_numbers(asked.numbers);
        if (!numbers.faults.empty()) {
            tell_faults(std::move(numbers.faults), asked.into, language, err);
            return 2;
        }
        wanted.choice.numbers = std::move(numbers.good);
    }
    Progress progress(language, err);
    wanted.tell = [&](const catalog::LoadProgress& far) { return progress.tell(far); };
    const auto loaded = catalog::load_release(source, asked.into, wanted);
    progress.end();
    if (!loaded) {
        err << "pairstand load: " << ui::sentence(loaded.error(), language) << '\n';
        return 2;
    }
    print(release_words(*loaded, asked.into, language), out);
    return loaded->report.taken == 0 ? 2 : 0;
}

} // namespace kiosk
