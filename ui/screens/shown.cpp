#include "ui/screens/shown.h"

namespace ui {
namespace {

using Texts = std::vector<std::string>;

void add_section(const Section& section, Texts& texts)
{
    texts.push_back(section.heading);
    texts.insert(texts.end(), section.sentences.begin(), section.sentences.end());
}

/// A bare percent, and its place on a line, are told without the words that explain them.
void add_percent(const std::string& percent, const Language& language, Texts& texts)
{
    if (percent.empty())
        return;
    texts.push_back(language.text(TextId::term_daily_value));
    texts.push_back(language.text(TextId::term_guide));
}

void add_label(const LabelWords& label, const Language& language, Texts& texts)
{
    texts.push_back(label.name);
    for (const auto& piece : label.pieces) {
        for (const auto* words : {&piece.name, &piece.amount, &piece.reading})
            texts.push_back(*words);
        add_percent(piece.percent, language, texts);
    }
}

void add_row(const RowWords& row, const Language& language, Texts& texts)
{
    for (const auto* words : {&row.name, &row.left.amount, &row.right.amount, &row.finding})
        texts.push_back(*words);
    for (const auto* side : {&row.left, &row.right})
        add_percent(side->percent, language, texts);
    texts.insert(texts.end(), row.remarks.begin(), row.remarks.end());
}

void add_pair(const PairWords& pair, const Language& language, Texts& texts)
{
    for (const auto& side : pair.sides)
        for (const auto* words : {&side.name, &side.servings, &side.net})
            texts.push_back(*words);
    texts.insert(texts.end(), pair.first.begin(), pair.first.end());
    texts.push_back(pair.guide);
    for (const auto& basis : pair.bases)
        texts.push_back(basis.words);
    for (const auto& row : pair.rows)
        add_row(row, language, texts);
    for (const auto& section : pair.sections)
        add_section(section, texts);
}

void add_why(const WhyWords& why, Texts& texts)
{
    texts.push_back(why.title);
    texts.push_back(why.what);
    for (const auto& line : why.lines)
        texts.push_back(line.words);
}

void add_amounts(const AmountsWords& amounts, const Language& language, Texts& texts)
{
    texts.push_back(amounts.words);
    for (const auto& basis : amounts.bases)
        texts.push_back(basis.words);
    for (const auto& kind : amounts.kinds)
        texts.push_back(language.text(kind.id));
}

/// What one unit of each costs is told there, and the rule names the words.
void add_prices(const State& state, const Language& language, Texts& texts)
{
    texts.push_back(language.text(TextId::term_unit_price));
    texts.push_back(language.text(TextId::price_rule));
    if (state.price_words)
        add_section(*state.price_words, texts);
    if (state.pair)
        for (const auto& side : state.pair->sides)
            texts.push_back(side.name);
}

} // namespace

std::vector<std::string> shown_texts(const State& state, ScreenId screen, const Language& language)
{
    Texts texts;
    if (screen == ScreenId::OneLabel && state.label)
        add_label(*state.label, language, texts);
    if ((screen == ScreenId::Pair || screen == ScreenId::GroupView) && state.pair)
        add_pair(*state.pair, language, texts);
    if (screen == ScreenId::Why && state.why)
        add_why(*state.why, texts);
    if (screen == ScreenId::Amounts && state.amounts)
        add_amounts(*state.amounts, language, texts);
    if (screen == ScreenId::Prices)
        add_prices(state, language, texts);
    if (screen == ScreenId::NotFound)
        texts.push_back(language.text(TextId::not_found_read_package));
    return texts;
}

std::vector<Meaning> meanings_for(const State& state, ScreenId screen, const Language& language)
{
    auto found = meanings_in(shown_texts(state, screen, language), language);
    return found.empty() ? all_meanings(language) : found;
}

} // namespace ui
