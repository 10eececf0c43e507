#include "kiosk/desk/load_words.h"

#include "kiosk/desk/difference_words.h"
#include "ui/words/error_words.h"

namespace kiosk {
namespace {

using ui::TextId;

/// "1 product ...", "3 products ...".
std::string counted(std::size_t count, TextId one, TextId many, const ui::Language& language)
{
    return count == 1 ? language.text(one) : language.fill(many, {{"n", std::to_string(count)}});
}

std::string nothing_words(const catalog::LoadReport& report, bool keep_good_rows, const std::string& catalog,
                          bool there, const ui::Language& language)
{
    std::string words = counted(report.faults.count(), TextId::load_nothing_one, TextId::load_nothing_many, language);
    if (keep_good_rows)
        words += ", " + language.text(TextId::load_no_good_row);
    words += ". " + language.fill(there ? TextId::load_as_it_was : TextId::load_not_written, {{"catalog", catalog}});
    return words + " " + language.text(TextId::load_mend);
}

} // namespace

std::vector<std::string> tab_words(const catalog::LoadReport& report, const ui::Language& language)
{
    std::vector<std::string> words;
    for (const auto& tab : report.tabs) {
        std::string others;
        for (const auto& other : tab.others)
            others += (others.empty() ? "\"" : ", \"") + other + "\"";
        words.push_back(language.fill(others.empty() ? TextId::load_tab : TextId::load_tab_others,
                                      {{"source", tab.source}, {"tab", "\"" + tab.name + "\""}, {"others", others}}));
    }
    return words;
}

std::vector<std::string> fault_words(const catalog::Faults& faults, const ui::Language& language, std::size_t most)
{
    std::vector<std::string> words;
    for (const auto& error : faults.kept()) {
        if (words.size() >= most)
            break;
        words.push_back(ui::sentence(error, language));
    }
    if (const auto more = faults.count() - words.size(); more > 0)
        words.push_back("... " + counted(more, TextId::load_more_faults_one, TextId::load_more_faults, language));
    return words;
}

std::string loaded_words(const catalog::LoadReport& report, bool keep_good_rows, const std::string& catalog, bool there,
                         const ui::Language& language)
{
    if (report.taken == 0)
        return nothing_words(report, keep_good_rows, catalog, there, language);
    std::string words = counted(report.taken, TextId::load_taken_one, TextId::load_taken_many, language) + " " +
                        language.fill(TextId::load_into, {{"catalog", catalog}});
    if (report.replaced > 0)
        words += ", " + language.fill(TextId::load_replaced, {{"n", std::to_string(report.replaced)}});
    if (report.refused_rows > 0)
        words += "; " + counted(report.refused_rows, TextId::load_row_left, TextId::load_rows_left, language);
    return words + ".";
}

std::vector<std::string> replaced_words(const catalog::LoadReport& report, const ui::Language& language)
{
    std::vector<std::string> words;
    if (report.taken == 0 || report.differing == 0)
        return words;
    words.push_back(counted(report.differing, TextId::load_differs_one, TextId::load_differs_many, language));
    for (const auto& difference : report.differences)
        words.push_back(difference_words(difference, Standing::Loaded, language));
    return words;
}

} // namespace kiosk
