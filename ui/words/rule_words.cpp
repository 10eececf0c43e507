#include "ui/words/rule_words.h"

#include "ui/words/core_words.h"
#include "ui/words/numbers.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace ui {
namespace {

using core::Answer;
using core::Reason;
using core::Rule;
using core::RuleSet;
using core::Verdict;

/// Keys of tables are names of texts; a test walks all of them.
TextId text_of(std::string_view kind, std::string_view key)
{
    return text_by_name(std::string(kind).append(key)).value();
}

bool is_wic(RuleSet set)
{
    return set == RuleSet::Wic || set == RuleSet::WicBefore;
}

bool is_program(RuleSet set)
{
    return is_wic(set) || set == RuleSet::Cacfp || set == RuleSet::CacfpBefore;
}

std::string days_words(const Rule& rule, const Language& language)
{
    const auto from = rule.from ? day_words(*rule.from, language) : "";
    const auto to = rule.to ? day_words(*rule.to, language) : "";
    if (rule.from && rule.to)
        return language.fill(rule.end_confirmed ? TextId::rule_from_to : TextId::rule_from_to_unsure,
                             {{"from", from}, {"to", to}});
    if (rule.from)
        return language.fill(TextId::rule_since, {{"from", from}});
    if (rule.to)
        return language.fill(rule.end_confirmed ? TextId::rule_until : TextId::rule_until_unsure, {{"to", to}});
    return "";
}

std::string reason_words(const Answer& answer, const Language& language)
{
    const auto about = [&](TextId text) {
        const auto nutrient = answer.decided ? answer.decided->limit.nutrient : core::Nutrient::Calories;
        return language.fill(text, {{"nutrient", in_sentence(nutrient_name(nutrient, language))}});
    };
    switch (answer.reason) {
    case Reason::RangeStraddles:
        return language.text(TextId::rule_why_straddles);
    case Reason::OunceDecides:
        return language.text(TextId::rule_why_ounce);
    case Reason::NoReferenceAmount:
        return language.text(TextId::rule_why_no_reference);
    case Reason::ReferenceAmountInWords:
        return language.text(TextId::rule_why_reference_words);
    case Reason::NoServingSize:
        return language.text(TextId::rule_why_no_size);
    case Reason::UnlikeMeasures:
        return language.text(TextId::rule_why_unlike);
    case Reason::FigureNotPrinted:
        return about(answer.decided && answer.decided->figure ? TextId::rule_why_no_percent // grams alone are printed
                                                              : TextId::rule_why_not_printed);
    case Reason::FigureOffTheRule:
        return about(TextId::rule_why_off);
    case Reason::FigureWorkedBack:
        return about(TextId::rule_why_worked_back);
    case Reason::MayBeMainDish:
        return language.text(TextId::rule_why_main_dish);
    case Reason::NeedsReferenceFood:
        return language.text(TextId::rule_why_other_food);
    case Reason::NeedsPackageWords:
        return language.text(TextId::rule_why_package);
    case Reason::LimitNotConfirmed:
        return language.text(TextId::rule_why_unread);
    case Reason::Figures: // no reason not to tell
    case Reason::OtherFood:
    case Reason::ForYoungChildren:
        break;
    }
    return "";
}

/// The answers of one label to one set.
std::vector<Answer> answers_of(const core::Product& product, RuleSet set)
{
    return core::answers_to(std::array{set}, product.label, product.reference_food);
}

/// What keeps a whole set from being answered is said once, without the rules' names.
std::optional<Answer> same_for_all(const std::vector<Answer>& answers)
{
    if (answers.size() < 2 || answers.front().decided)
        return std::nullopt;
    const auto differs = [&](const Answer& answer) {
        return answer.verdict != answers.front().verdict || answer.reason != answers.front().reason;
    };
    return std::ranges::none_of(answers, differs) ? std::optional(answers.front()) : std::nullopt;
}

/// Rules that are answered alike, in one list.
struct Group {
    std::array<std::string, 2> answers; ///< of either side; empty: the rule is not about that food
    bool told = false;                  ///< with a verdict: then each side is named by itself
    std::vector<const Rule*> rules;
};

std::string list_of(const std::vector<const Rule*>& rules, const core::ReferenceAmount* food, const Language& language)
{
    std::string list;
    for (const Rule* rule : rules) {
        list += list.empty() ? "" : "; ";
        const bool shown = is_program(rule->set) && rule->limits.size() == 1 && rule->limits.front().confirmed;
        const auto cited = cited_rule(*rule, language);
        list += shown ? language.fill(TextId::rule_named_limit,
                                      {{"name", cited}, {"limit", limit_words(rule->limits.front(), food, language)}})
                      : cited;
    }
    return list;
}

const std::string& note_of(RuleSet set, const Language& language)
{
    if (is_wic(set))
        return language.text(TextId::rules_wic_note);
    return language.text(is_program(set) ? TextId::rules_cacfp_note : TextId::rules_claims_note);
}

std::string side_words(TextId side, const std::string& answer, const Language& language)
{
    return language.fill(TextId::rule_side, {{"side", language.text(side)}, {"answer", answer}});
}

/// Both sides' answers in one line; what is the same reason not to tell on both is said once.
std::string both_words(const std::array<std::string, 2>& answers, bool told, const Language& language)
{
    if (!told && !answers[0].empty() && answers[0] == answers[1])
        return side_words(TextId::rule_both, answers[0], language);
    std::string words;
    for (std::size_t i = 0; i < 2; ++i)
        if (!answers[i].empty())
            words +=
                (words.empty() ? "" : " ") + side_words(i == 0 ? TextId::left : TextId::right, answers[i], language);
    return words;
}

/// One set held against both labels.
class PairSet {
public:
    PairSet(const core::Product& left, const core::Product& right, RuleSet set, const Language& language)
        : set_(set), language_(language), answers_{answers_of(left, set), answers_of(right, set)}
    {
    }

    Section section()
    {
        Section section{rule_set_name(set_, language_), {note_of(set_, language_)}};
        if (auto whole = for_all(); !whole.empty())
            section.sentences.push_back(std::move(whole));
        for (const Rule* rule : core::rules_of(set_))
            add(*rule);
        for (const auto& [answers, told, rules] : groups_)
            section.sentences.push_back(
                language_.fill(TextId::rule_line, {{"rules", list_of(rules, nullptr, language_)},
                                                   {"answers", both_words(answers, told, language_)}}));
        return section;
    }

private:
    /// Takes away what is said of a whole side at once.
    std::string for_all()
    {
        std::array<std::string, 2> whole;
        for (std::size_t i = 0; i < 2; ++i) {
            if (answers_[i].empty())
                whole[i] = language_.text(TextId::rule_not_this_food);
            else if (const auto same = same_for_all(answers_[i])) {
                whole[i] = answer_words(*same, language_);
                answers_[i].clear();
            }
        }
        return both_words(whole, false, language_);
    }

    void add(const Rule& rule)
    {
        std::array<std::string, 2> words;
        bool told = false;
        for (std::size_t i = 0; i < 2; ++i) {
            const auto answer = std::ranges::find(answers_[i], &rule, &Answer::rule);
            if (answer == answers_[i].end())
                continue;
            words[i] = answer_words(*answer, language_);
            told = told || answer->verdict != Verdict::CannotTell;
        }
        if (words[0].empty() && words[1].empty())
            return;
        auto group = std::ranges::find(groups_, words, &Group::answers);
        if (group == groups_.end())
            group = groups_.insert(groups_.end(), {words, told, {}});
        group->rules.push_back(&rule);
    }

    RuleSet set_;
    const Language& language_;
    std::array<std::vector<Answer>, 2> answers_;
    std::vector<Group> groups_;
};

/// One set held against one label.
class OneSet {
public:
    OneSet(const core::Product& product, RuleSet set, const Language& language, LabelWords& label)
        : product_(product), set_(set), language_(language), label_(label), answers_(answers_of(product, set))
    {
    }

    void write()
    {
        piece(LabelPiece::Kind::Heading, rule_set_name(set_, language_));
        sentence(note_of(set_, language_));
        if (answers_.empty())
            return sentence(language_.text(TextId::rule_not_this_food_alone));
        if (const auto same = same_for_all(answers_))
            return sentence(language_.fill(TextId::rule_all_alone, {{"answer", answer_words(*same, language_)}}));
        for (const auto& answer : answers_)
            if (answer.decided)
                with_arithmetic(answer);
        without_arithmetic();
    }

private:
    void with_arithmetic(const Answer& answer)
    {
        answered({answer.rule}, answer);
        for (auto& words : arithmetic_sentences(answer, product_, language_))
            if (std::ranges::find(said_, words) == said_.end()) { // "high" and "good source" share their arithmetic
                sentence(words);
                said_.push_back(std::move(words));
            }
    }

    /// Rules that no figure answers, one sentence a reason.
    void without_arithmetic()
    {
        std::vector<std::pair<Answer, std::vector<const Rule*>>> groups;
        for (const auto& answer : answers_) {
            if (answer.decided)
                continue;
            auto group = std::ranges::find_if(groups, [&](const auto& g) { return g.first.reason == answer.reason; });
            if (group == groups.end())
                group = groups.insert(groups.end(), {answer, {}});
            group->second.push_back(answer.rule);
        }
        for (const auto& [answer, rules] : groups)
            answered(rules, answer);
    }

    void answered(const std::vector<const Rule*>& rules, const Answer& answer)
    {
        sentence(language_.fill(TextId::rule_line_one, {{"rules", list_of(rules, product_.reference_food, language_)},
                                                        {"answer", answer_words(answer, language_)}}));
    }

    void piece(LabelPiece::Kind kind, std::string words)
    {
        label_.pieces.push_back({kind, std::move(words), "", "", "", std::nullopt});
    }

    void sentence(std::string words) { piece(LabelPiece::Kind::Sentence, std::move(words)); }

    const core::Product& product_;
    RuleSet set_;
    const Language& language_;
    LabelWords& label_;
    std::vector<Answer> answers_;
    std::vector<std::string> said_;
};

} // namespace

std::vector<Section> rule_sections(const core::Product& left, const core::Product& right,
                                   std::span<const RuleSet> chosen, const Language& language)
{
    std::vector<Section> sections;
    for (const RuleSet set : chosen)
        sections.push_back(PairSet(left, right, set, language).section());
    return sections;
}

void add_rules(const core::Product& product, std::span<const RuleSet> chosen, const Language& language,
               LabelWords& label)
{
    for (const RuleSet set : chosen)
        OneSet(product, set, language, label).write();
}

std::string rule_name(const Rule& rule, const Language& language)
{
    const TextId text = text_of("rule_", rule.key);
    if (!rule.subject)
        return language.text(text);
    return language.fill(text, {{"nutrient", in_sentence(nutrient_name(*rule.subject, language))}});
}

const std::string& rule_set_name(RuleSet set, const Language& language)
{
    const auto all = core::rule_sets();
    return language.text(text_of("ruleset_", std::ranges::find(all, set, &core::RuleSetInfo::set)->key));
}

std::string day_words(core::Day day, const Language& language)
{
    return language.fill(TextId::date, {{"month", language.text(text_of("month_", std::to_string(day.month)))},
                                        {"day", std::to_string(day.day)},
                                        {"year", std::to_string(day.year)}});
}

std::string cited_rule(const Rule& rule, const Language& language)
{
    const auto name = rule_name(rule, language);
    const auto days = days_words(rule, language);
    return language.fill(days.empty() ? TextId::rule_cited : TextId::rule_cited_days,
                         {{"name", name}, {"citation", core_words(rule.citation, language)}, {"days", days}});
}

std::string answer_words(const Answer& answer, const Language& language)
{
    const bool wic = is_wic(answer.rule->set);
    const bool program = is_program(answer.rule->set);
    std::string words;
    switch (answer.verdict) {
    case Verdict::Meets:
        words = language.text(wic ? TextId::rule_wic_meets : program ? TextId::rule_limit_meets : TextId::rule_meets);
        break;
    case Verdict::DoesNotMeet:
        words = language.text(wic       ? TextId::rule_wic_meets_not
                              : program ? TextId::rule_limit_meets_not
                                        : TextId::rule_meets_not);
        break;
    case Verdict::CannotTell:
        return language.fill(wic ? TextId::rule_wic_cannot : TextId::rule_cannot,
                             {{"reason", reason_words(answer, language)}});
    case Verdict::NotForThisFood:
        return language.text(TextId::rule_not_this_food);
    }
    if (answer.true_content_agrees)
        return words;
    return language.fill(TextId::rule_true_content, {{"answer", words}});
}

} // namespace ui
