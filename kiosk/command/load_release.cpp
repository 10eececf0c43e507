#include "kiosk/command/load_release.h"

#include "kiosk/desk/release_words.h"
#include "ui/words/error_words.h"

#include <fstream>
#include <ostream>
#include <unistd.h>

namespace kiosk {
namespace {

/// The numbers of a list, one a line; a line that holds none is told.
core::Result<std::set<core::Gtin>> read_numbers(const std::string& path)
{
    std::ifstream file(path);
    if (!file)
        return core::refuse(core::Error::Kind::NoSuchFile, "no list", core::Place{path, 0, {}, {}, {}});
    std::set<core::Gtin> numbers;
    std::size_t row = 0;
    for (std::string line; std::getline(file, line);) {
        ++row;
        while (!line.empty() && (line.back() == '\r' || line.back() == ' '))
            line.pop_back();
        if (line.empty())
            continue;
        const auto gtin = core::Gtin::parse(line);
        if (!gtin)
            return core::refuse(gtin.error().kind, gtin.error().detail, core::Place{path, row, {}, line, {}});
        numbers.insert(*gtin);
    }
    return numbers;
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
        if (!numbers) {
            err << "pairstand load: " << ui::sentence(numbers.error(), language) << '\n';
            return 2;
        }
        wanted.choice.numbers = *std::move(numbers);
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
