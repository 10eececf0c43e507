#include "kiosk/desk/release_words.h"

#include "kiosk/desk/audit_words.h"
#include "kiosk/desk/difference_words.h"

#include <algorithm>
#include <iterator>

namespace kiosk {
namespace {

using catalog::Finding;
using ui::TextId;
using Kind = ReportLine::Kind;

struct FindingText {
    Finding finding;
    TextId text;
};
constexpr FindingText not_taken[] = {{Finding::OlderRecord, TextId::release_older_record},
                                     {Finding::NotChosen, TextId::release_not_chosen},
                                     {Finding::Case, TextId::release_case},
                                     {Finding::NotAProduct, TextId::release_not_a_product},
                                     {Finding::WrongDigits, TextId::release_wrong_digits},
                                     {Finding::UnreadableCode, TextId::release_unreadable_code},
                                     {Finding::NoCode, TextId::release_no_code},
                                     {Finding::NoServingSize, TextId::release_no_serving_size},
                                     {Finding::NoName, TextId::release_no_name},
                                     {Finding::NoNutrients, TextId::release_no_nutrients}};
constexpr FindingText to_know[] = {{Finding::OwnEntryKept, TextId::release_own_kept},
                                   {Finding::NoDerivation, TextId::release_no_derivation},
                                   {Finding::WorkedBack, TextId::release_worked_back},
                                   {Finding::OlderTaken, TextId::release_older_taken},
                                   {Finding::CodeCompleted, TextId::release_code_completed},
                                   {Finding::UnitGuessed, TextId::release_unit_guessed},
                                   {Finding::UnitUnknown, TextId::release_unit_unknown},
                                   {Finding::NutrientTwice, TextId::release_nutrient_twice},
                                   {Finding::TextCut, TextId::release_text_cut}};
constexpr FindingText loose_rows[] = {{Finding::LostAmounts, TextId::release_lost_amounts},
                                      {Finding::BadAmounts, TextId::release_bad_amounts},
                                      {Finding::BrokenRow, TextId::release_broken_row}};
static_assert(std::size(not_taken) + std::size(to_know) + std::size(loose_rows) == catalog::finding_count);

class Words {
public:
    Words(const catalog::ReleaseReport& report, const ui::Language& language) : report_(report), language_(language) {}

    void sentence(TextId text, std::size_t count)
    {
        if (count > 0)
            add(Kind::Sentence, language_.fill(text, {{"n", std::to_string(count)}}));
    }
    void add(Kind kind, std::string words) { lines_.push_back({kind, std::move(words)}); }

    template<std::size_t Length>
    void findings(TextId heading, const FindingText (&texts)[Length])
    {
        bool headed = false;
        for (const auto& [finding, text] : texts) {
            const auto& found = report_.of(finding);
            if (found.count == 0)
                continue;
            if (!headed)
                add(Kind::Heading, language_.text(heading));
            headed = true;
            add(Kind::Count, language_.fill(text, {{"n", std::to_string(found.count)}}));
            for (const auto& sample : found.samples)
                add(Kind::Sample, language_.fill(TextId::release_such_as, {{"sample", sample}}));
            if (finding == Finding::OwnEntryKept)
                for (const auto& difference : report_.own_kept())
                    add(Kind::Sample, difference_words(difference, Standing::Own, language_));
        }
    }
    std::vector<ReportLine> lines() { return std::move(lines_); }

private:
    const catalog::ReleaseReport& report_;
    const ui::Language& language_;
    std::vector<ReportLine> lines_;
};

/// "Cereal", "Cookies & Biscuits" and 20 more.
std::string names_words(const catalog::NotThere& names, const ui::Language& language)
{
    std::string there;
    for (const auto& name : names.there)
        there += (there.empty() ? "\"" : ", \"") + name + "\"";
    return names.more == 0
               ? there
               : language.fill(TextId::release_and_more, {{"there", there}, {"n", std::to_string(names.more)}});
}

std::string not_there_words(const catalog::NotThere& names, const ui::Language& language)
{
    const bool category = names.what == catalog::NotThere::What::Category;
    const auto some = category ? TextId::release_no_category : TextId::release_no_market;
    const auto none = category ? TextId::release_no_categories : TextId::release_no_markets;
    return language.fill(names.there.empty() ? none : some,
                         {{"asked", "\"" + names.asked + "\""}, {"there", names_words(names, language)}});
}

TextId stage_text(catalog::LoadProgress::Stage stage)
{
    switch (stage) {
    case catalog::LoadProgress::Stage::Foods:
        return TextId::load_foods;
    case catalog::LoadProgress::Stage::Amounts:
        return TextId::load_amounts;
    case catalog::LoadProgress::Stage::Products:
        break;
    }
    return TextId::load_products;
}

} // namespace

std::vector<ReportLine> release_words(const catalog::ReleaseLoaded& loaded, const std::string& catalog,
                                      const ui::Language& language)
{
    const auto& report = loaded.report;
    Words words(report, language);
    if (loaded.cancelled) {
        words.add(Kind::Sentence, language.text(TextId::release_cancelled));
        return words.lines();
    }
    words.add(Kind::Sentence, language.fill(TextId::release_read, {{"records", std::to_string(report.records)},
                                                                   {"amounts", std::to_string(report.amounts)}}));
    if (report.taken == 0)
        words.add(Kind::Sentence, language.text(TextId::release_none_taken));
    else
        words.add(Kind::Sentence,
                  language.fill(TextId::release_taken, {{"n", std::to_string(report.taken)}, {"catalog", catalog}}));
    for (const auto& names : report.not_there)
        words.add(Kind::Sentence, not_there_words(names, language));
    words.sentence(TextId::release_replaced, report.replaced);
    words.sentence(TextId::release_kept, report.kept);
    words.findings(TextId::release_not_taken, not_taken);
    words.findings(TextId::release_to_know, to_know);
    words.findings(TextId::release_loose_rows, loose_rows);
    auto lines = words.lines();
    if (report.audit.labels() > 0) { // none in a load that took nothing
        lines.push_back({Kind::Heading, language.text(TextId::release_audit)});
        std::ranges::move(audit_words(report.audit, language), std::back_inserter(lines));
    }
    return lines;
}

std::string progress_words(const catalog::LoadProgress& progress, Milliseconds since_start,
                           const ui::Language& language)
{
    return progress_words(language.text(stage_text(progress.stage)), progress.done, progress.whole, since_start,
                          language);
}

std::string progress_words(const std::string& what, std::uint64_t so_far, std::uint64_t in_all,
                           Milliseconds since_start, const ui::Language& language)
{
    const auto whole = std::max<std::uint64_t>(in_all, 1);
    const auto done = std::min(so_far, whole);
    const auto percent = std::to_string(done * 100 / whole);
    if (since_start < std::chrono::seconds(3) || done == 0)
        return language.fill(TextId::load_progress, {{"stage", what}, {"percent", percent}});
    const double each = static_cast<double>(since_start.count()) / static_cast<double>(done);
    const auto seconds = static_cast<std::uint64_t>(each * static_cast<double>(whole - done) / 1000) + 1;
    if (seconds < 90)
        return language.fill(TextId::load_progress_left,
                             {{"stage", what}, {"percent", percent}, {"seconds", std::to_string(seconds)}});
    return language.fill(TextId::load_progress_left_minutes,
                         {{"stage", what}, {"percent", percent}, {"minutes", std::to_string((seconds + 59) / 60)}});
}

} // namespace kiosk
