#include "ui/words/spoken.h"

#include "ui/words/spoken_signs.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace ui {
namespace {

/// A unit as it is written, and the text of its three forms.
struct SpokenUnit {
    std::string_view sign;
    TextId id;
    bool alone = true; ///< is a unit without a number too: no word looks like it
};
/// Longer ones before those that they begin with.
constexpr SpokenUnit units[] = {
    {"mcg", TextId::spoken_mcg},       {"µg", TextId::spoken_mcg},         {"mg", TextId::spoken_mg},
    {"mL", TextId::spoken_ml},         {"ml", TextId::spoken_ml},          {"m²", TextId::spoken_m2},
    {"kg", TextId::spoken_kg},         {"gal", TextId::spoken_gal, false}, {"g", TextId::spoken_g},
    {"L", TextId::spoken_l, false},    {"fl oz", TextId::spoken_fl_oz},    {"oz", TextId::spoken_oz},
    {"lbs", TextId::spoken_lb},        {"lb", TextId::spoken_lb},          {"tbsp", TextId::spoken_tbsp},
    {"tsp", TextId::spoken_tsp},       {"pt", TextId::spoken_pt, false},   {"qt", TextId::spoken_qt, false},
    {"dry pt", TextId::spoken_dry_pt}, {"dry qt", TextId::spoken_dry_qt},  {"cm²", TextId::spoken_cm2},
    {"dm²", TextId::spoken_dm2},       {"sq in", TextId::spoken_sq_in},    {"sq ft", TextId::spoken_sq_ft},
    {"sq yd", TextId::spoken_sq_yd},   {"IU", TextId::spoken_iu},
};

struct NamedPart {
    std::string_view over;
    std::string_view under;
    TextId id;
};
constexpr NamedPart parts[] = {
    {"1", "3", TextId::spoken_1_3}, {"2", "3", TextId::spoken_2_3}, {"1", "4", TextId::spoken_1_4},
    {"3", "4", TextId::spoken_3_4}, {"1", "8", TextId::spoken_1_8}, {"3", "8", TextId::spoken_3_8},
    {"5", "8", TextId::spoken_5_8}, {"7", "8", TextId::spoken_7_8},
};

/// Below it a number is a number; from here on it is a code.
constexpr std::size_t shortest_code = 8;

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

/// Letters of ASCII, and every byte of the others.
bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

std::vector<std::string_view> split(std::string_view text, char by)
{
    std::vector<std::string_view> pieces;
    while (true) {
        const auto end = text.find(by);
        pieces.push_back(text.substr(0, end));
        if (end == std::string_view::npos)
            return pieces;
        text.remove_prefix(end + 1);
    }
}

/// How many digits the text begins with.
std::size_t digits_at(std::string_view text)
{
    return static_cast<std::size_t>(std::ranges::find_if_not(text, is_digit) - text.begin());
}

std::string_view word_at(std::string_view text)
{
    const auto end = std::ranges::find_if_not(text, [](char c) { return is_letter(c) || is_digit(c) || c == '\''; });
    return text.substr(0, static_cast<std::size_t>(end - text.begin()));
}

/// A number as it is written and said, and what it is.
struct Number {
    std::size_t bytes = 0;
    std::string said; ///< "1200", "0.5", "1 and a half"; of a part alone empty
    std::string over; ///< of a part: 1/2
    std::string under;
};

class Reader {
public:
    Reader(std::string_view text, const Language& language) : rest_(text), language_(language) {}

    std::string read()
    {
        while (!rest_.empty())
            if (is_digit(rest_[0]) || (rest_[0] == '$' && digits_at(rest_.substr(1)) > 0))
                figure();
            else if (rest_[0] == '%')
                percent("");
            else if (is_letter(rest_[0]))
                word();
            else
                copy(1);
        return std::move(said_);
    }

private:
    void copy(std::size_t bytes)
    {
        said_ += rest_.substr(0, bytes);
        rest_.remove_prefix(bytes);
    }

    void say(std::string_view words, std::size_t instead_of)
    {
        said_ += words;
        rest_.remove_prefix(instead_of);
    }

    /// One of the forms that a text holds.
    [[nodiscard]] std::string form(TextId id, std::size_t which, std::string_view n = "") const
    {
        const auto filled = language_.fill(id, {{"n", n}});
        const auto forms = split(filled, '|');
        return std::string(forms[std::min(which, forms.size() - 1)]);
    }

    [[nodiscard]] std::string counted(TextId id, std::string_view n) const { return form(id, n == "1" ? 0 : 1, n); }

    void figure()
    {
        if (rest_[0] == '$')
            return money();
        const auto digits = digits_at(rest_);
        if (digits >= shortest_code)
            return code(digits);
        if (const auto bytes = date_at(rest_))
            return copy(bytes);
        const Number number = number_at(rest_);
        rest_.remove_prefix(number.bytes);
        const std::size_t blank = rest_.starts_with(' ') ? 1 : 0;
        if (rest_.substr(blank).starts_with('%')) {
            rest_.remove_prefix(blank);
            return percent(number.under.empty() ? number.said : part_before(number, ""));
        }
        if (const auto* const unit = unit_at(rest_.substr(blank), false)) {
            rest_.remove_prefix(blank + unit->sign.size());
            said_ += with_unit(number, unit->id);
        } else
            bare_number(number);
    }

    /// "2026-01-12": ten bytes, or none.
    [[nodiscard]] static std::size_t date_at(std::string_view text)
    {
        const bool date = text.size() >= 10 && digits_at(text) == 4 && text[4] == '-' &&
                          digits_at(text.substr(5)) == 2 && text[7] == '-' && digits_at(text.substr(8)) == 2;
        return date ? 10 : 0;
    }

    /// Digit by digit, in threes from the left, as people read them out to one another.
    void code(std::size_t digits)
    {
        for (std::size_t i = 0; i < digits; ++i) {
            if (i > 0)
                said_ += i % 3 == 0 ? ", " : " ";
            said_ += rest_[i];
        }
        rest_.remove_prefix(digits);
    }

    void money()
    {
        rest_.remove_prefix(1);
        const auto number = plain_at(rest_);
        rest_.remove_prefix(number.bytes);
        const auto point = number.said.find('.');
        const auto dollars = number.said.substr(0, point);
        auto cents = point == std::string::npos ? "" : number.said.substr(point + 1);
        if (!cents.empty() && cents.size() != 2) {
            said_ += counted(TextId::spoken_dollars, number.said);
            return;
        }
        cents.erase(0, cents.find_first_not_of('0')); // all of them where there is none
        const auto of_dollars = counted(TextId::spoken_dollars, dollars);
        const auto of_cents = counted(TextId::spoken_cents, cents);
        if (cents.empty())
            said_ += of_dollars;
        else if (dollars == "0")
            said_ += of_cents;
        else
            said_ += language_.fill(TextId::spoken_money, {{"dollars", of_dollars}, {"cents", of_cents}});
    }

    /// "1,200", "0.5": without separators.
    [[nodiscard]] static Number plain_at(std::string_view text)
    {
        Number number;
        number.bytes = digits_at(text);
        number.said = text.substr(0, number.bytes);
        while (number.bytes < text.size() && text[number.bytes] == ',' &&
               digits_at(text.substr(number.bytes + 1)) == 3) {
            number.said += text.substr(number.bytes + 1, 3);
            number.bytes += 4;
        }
        if (number.bytes < text.size() && text[number.bytes] == '.')
            if (const auto decimals = digits_at(text.substr(number.bytes + 1)); decimals > 0) {
                number.said += text.substr(number.bytes, decimals + 1);
                number.bytes += decimals + 1;
            }
        return number;
    }

    /// "1/2", no more than that: "1/2/2026" is a date.
    [[nodiscard]] static Number part_at(std::string_view text)
    {
        Number number;
        const auto over = digits_at(text);
        if (over == 0 || over >= text.size() || text[over] != '/')
            return number;
        const auto under = digits_at(text.substr(over + 1));
        const auto end = over + 1 + under;
        if (under == 0 || (end < text.size() && (text[end] == '/' || is_letter(text[end]))))
            return number;
        return {end, "", std::string(text.substr(0, over)), std::string(text.substr(over + 1, under))};
    }

    [[nodiscard]] static Number number_at(std::string_view text)
    {
        if (auto part = part_at(text); part.bytes > 0)
            return part;
        auto number = plain_at(text);
        if (number.bytes < text.size() && text[number.bytes] == ' ')
            if (auto part = part_at(text.substr(number.bytes + 1)); part.bytes > 0) {
                part.bytes += number.bytes + 1;
                part.said = number.said;
                return part;
            }
        return number;
    }

    /// Whether a noun takes the second form of "one" and "half".
    [[nodiscard]] bool feminine(std::string_view noun) const
    {
        noun = word_at(noun);
        const auto endings = split(language_.text(TextId::spoken_feminine), ' ');
        return std::ranges::any_of(endings, [&](std::string_view end) { return noun.ends_with(end); });
    }

    /// "1/2", "1 1/2" before this noun; it may be empty.
    [[nodiscard]] std::string part_before(const Number& number, std::string_view noun) const
    {
        const auto* const named = std::ranges::find_if(
            parts, [&](const NamedPart& part) { return part.over == number.over && part.under == number.under; });
        std::string part;
        if (number.over == "1" && number.under == "2")
            part = noun.empty() && number.said.empty() ? language_.text(TextId::spoken_half_alone)
                                                       : form(TextId::spoken_half, feminine(noun) ? 1 : 0);
        else if (named != std::end(parts))
            part = language_.text(named->id);
        else
            part = language_.fill(TextId::spoken_fraction, {{"over", number.over}, {"under", number.under}});
        if (number.said.empty())
            return part;
        return language_.fill(TextId::spoken_mixed, {{"n", number.said}, {"part", part}});
    }

    /// What stands between a part and its noun: a blank, or " de ".
    [[nodiscard]] std::string link_of(const Number& number) const
    {
        if (!number.said.empty() || number.under == "2")
            return " ";
        const auto linked = language_.fill(TextId::spoken_part_of, {{"part", ""}, {"noun", ""}});
        return linked;
    }

    [[nodiscard]] std::string with_unit(const Number& number, TextId unit) const
    {
        if (number.under.empty())
            return counted(unit, number.said);
        const auto one = form(unit, 2);
        if (!number.said.empty())
            return form(unit, 1, part_before(number, one));
        return part_before(number, one) + link_of(number) + one;
    }

    void bare_number(const Number& number)
    {
        const auto noun = rest_.starts_with(' ') ? word_at(rest_.substr(1)) : std::string_view{};
        if (number.under.empty()) {
            const auto nouns = split(language_.text(TextId::spoken_counted), ' ');
            const bool one = number.said == "1" && std::ranges::find(nouns, noun) != nouns.end();
            said_ += one ? form(TextId::spoken_one, feminine(noun) ? 1 : 0) : number.said;
            to_before_a_number();
            return;
        }
        const auto link = link_of(number);
        const bool linked = link != " " && link == " " + std::string(noun) + " ";
        said_ += part_before(number, linked ? std::string_view{} : noun);
        if (!noun.empty() && !linked && link != " ")
            say(link, 1);
    }

    /// "5-8" is "5 to 8".
    void to_before_a_number()
    {
        if (rest_.starts_with('-') && digits_at(rest_.substr(1)) > 0)
            say(" " + language_.text(TextId::spoken_to) + " ", 1);
    }

    /// From the sign on, with the number before it or none.
    void percent(const std::string& n)
    {
        rest_.remove_prefix(1);
        const std::size_t blank = rest_.starts_with(' ') ? 1 : 0;
        const auto next = word_at(rest_.substr(blank));
        const bool daily = is_daily_value(next);
        if (daily)
            rest_.remove_prefix(blank + next.size());
        if (n.empty())
            said_ += language_.text(daily ? TextId::spoken_percent_bare_daily : TextId::spoken_percent_bare);
        else
            said_ += language_.fill(daily ? TextId::spoken_percent_daily : TextId::spoken_percent, {{"n", n}});
    }

    /// As labels shorten it, in English and in Spanish: common practice.
    [[nodiscard]] static bool is_daily_value(std::string_view word) { return word == "DV" || word == "VD"; }

    [[nodiscard]] static const SpokenUnit* unit_at(std::string_view text, bool alone)
    {
        const auto* const found = std::ranges::find_if(units, [&](const SpokenUnit& unit) {
            if (!text.starts_with(unit.sign) || (alone && !unit.alone))
                return false;
            const auto behind = text.substr(unit.sign.size());
            return behind.empty() || (!is_letter(behind[0]) && !is_digit(behind[0]));
        });
        return found == std::end(units) ? nullptr : found;
    }

    /// The "g" of "101.9(g)" and of "101.9(c)(8)(g)".
    [[nodiscard]] bool in_a_paragraph() const
    {
        const auto size = said_.size();
        return size >= 2 && said_[size - 1] == '(' && (is_digit(said_[size - 2]) || said_[size - 2] == ')');
    }

    void word()
    {
        for (const auto pair : split(language_.text(TextId::spoken_short), '|'))
            if (const auto equals = pair.find('=');
                equals != 0 && equals != std::string_view::npos && rest_.starts_with(pair.substr(0, equals)))
                return say(pair.substr(equals + 1), equals);
        const auto word = word_at(rest_);
        if (const auto* const unit = in_a_paragraph() ? nullptr : unit_at(rest_, true)) {
            auto many = form(unit->id, 1);
            return say(many.erase(0, many.find_first_not_of(' ')), unit->sign.size());
        }
        if (is_daily_value(word))
            return say(language_.text(TextId::spoken_daily_value), word.size());
        copy(word.size());
    }

    std::string_view rest_;
    const Language& language_;
    std::string said_;
};

} // namespace

std::string spoken(std::string_view words, const Language& language)
{
    const auto plain = tidy(without_signs(words, language));
    return tidy(Reader(plain, language).read());
}

} // namespace ui
