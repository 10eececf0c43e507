#include "core/label/contents.h"

#include "core/figure/figure.h"

#include <algorithm>
#include <string>

namespace core {
namespace {

constexpr std::int64_t billion = 1'000'000'000;
constexpr std::int64_t largest = 1'000'000 * billion; ///< a ton of anything is no package
constexpr int most_packages = 1000;

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_letter(char c)
{
    return c >= 'a' && c <= 'z';
}

/// How units are written on packages; where one begins like another, the longer stands first.
struct Spelling {
    std::string_view word;
    TradeUnit unit;
};
using U = TradeUnit;
constexpr Spelling spellings[] = {
    {"fluid ounces", U::FluidOunce},
    {"fluid ounce", U::FluidOunce},
    {"fl. oz", U::FluidOunce},
    {"fl oz", U::FluidOunce},
    {"fl.oz", U::FluidOunce},
    {"floz", U::FluidOunce},
    {"dry pints", U::DryPint},
    {"dry pint", U::DryPint},
    {"dry pt", U::DryPint},
    {"dry quarts", U::DryQuart},
    {"dry quart", U::DryQuart},
    {"dry qt", U::DryQuart},
    {"ounces", U::Ounce},
    {"ounce", U::Ounce},
    {"oz", U::Ounce},
    {"pounds", U::Pound},
    {"pound", U::Pound},
    {"lbs", U::Pound},
    {"lb", U::Pound},
    {"gallons", U::Gallon},
    {"gallon", U::Gallon},
    {"gal", U::Gallon},
    {"quarts", U::Quart},
    {"quart", U::Quart},
    {"qt", U::Quart},
    {"pints", U::Pint},
    {"pint", U::Pint},
    {"pt", U::Pint},
    {"kilograms", U::Kilogram},
    {"kilogram", U::Kilogram},
    {"kg", U::Kilogram},
    {"grams", U::Gram},
    {"gram", U::Gram},
    {"g", U::Gram},
    {"milliliters", U::Millilitre},
    {"milliliter", U::Millilitre},
    {"ml", U::Millilitre},
    {"liters", U::Litre},
    {"liter", U::Litre},
    {"l", U::Litre},
    {"counts", U::Piece},
    {"count", U::Piece},
    {"ct", U::Piece},
    {"pieces", U::Piece},
    {"each", U::Piece},
    {"ea", U::Piece},
    {"dozen", U::Dozen},
    {"doz", U::Dozen},
    {"sq. ft", U::SquareFoot},
    {"sq ft", U::SquareFoot},
};

constexpr std::string_view containers[] = {"packs",   "pack", "pk",   "cans",  "bottles", "bars",
                                           "pouches", "cups", "bags", "boxes", "cartons", "packets"};

/// Reads from left to right.
class Reader {
public:
    explicit Reader(std::string_view printed) : text_(printed)
    {
        std::ranges::transform(text_, text_.begin(),
                               [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    }

    std::optional<Contents> read()
    {
        while (at_ < text_.size() && !whole_known_ && !unclear_) {
            if (is_digit(text_[at_]))
                number();
            else if (is_letter(text_[at_]))
                word();
            else
                ++at_;
        }
        if (unclear_ || contents_.each.empty() || (containers_ && !says_each_) || (says_each_ && !containers_))
            return std::nullopt;
        if (containers_ && contents_.packages == 1)
            contents_.packages = *containers_;
        return counted_clearly() ? std::optional(contents_) : std::nullopt;
    }

private:
    [[nodiscard]] std::string_view rest() const { return std::string_view(text_).substr(at_); }

    void blanks() { at_ = std::min(text_.find_first_not_of(' ', at_), text_.size()); }

    /// Takes a word that ends where its letters end.
    bool take(std::string_view word)
    {
        if (!rest().starts_with(word) || (at_ + word.size() < text_.size() && is_letter(text_[at_ + word.size()])))
            return false;
        at_ += word.size();
        return true;
    }

    /// A sign between a number of packages and what is in each: "-", "x", and the signs for times and from-to.
    bool take_times()
    {
        for (const std::string_view sign : {"-", "x", "\xC3\x97", "\xE2\x80\x93"}) {
            const auto next = text_.find_first_not_of(' ', at_ + sign.size());
            if (rest().starts_with(sign) && next != std::string::npos && is_digit(text_[next])) {
                at_ = next;
                return true;
            }
        }
        return false;
    }

    /// Digits with a point, or with commas before each three.
    std::optional<std::int64_t> plain_number()
    {
        std::string digits;
        for (; at_ < text_.size() && (is_digit(text_[at_]) || text_[at_] == '.' || text_[at_] == ','); ++at_) {
            if (text_[at_] != ',') {
                digits += text_[at_];
                continue;
            }
            const auto end = text_.find_first_not_of("0123456789", at_ + 1);
            if (std::min(end, text_.size()) - at_ == 1)
                break; // a comma between words
            if (std::min(end, text_.size()) - at_ != 4)
                return std::nullopt; // a decimal comma
        }
        if (digits.ends_with('.'))
            digits.pop_back();
        const auto number = parse_decimal(digits);
        return number ? std::optional(number->nano) : std::nullopt;
    }

    /// "/4" behind "3": 21 CFR 101.7(d) knows halves, quarters, eighths, sixteenths and thirty-seconds, exact in
    /// billionths.
    std::optional<std::int64_t> over(std::int64_t numerator)
    {
        ++at_;
        const auto denominator = at_ < text_.size() && is_digit(text_[at_]) ? plain_number() : std::nullopt;
        for (const std::int64_t good : {2, 4, 8, 16, 32})
            if (denominator == good * billion)
                return numerator / good;
        return std::nullopt;
    }

    /// "1/2" behind "1 " or "1-": part of the same number.
    std::optional<std::int64_t> with_fraction(std::int64_t first)
    {
        if (rest().starts_with('/'))
            return over(first);
        const bool joined = rest().starts_with(' ') || rest().starts_with('-');
        const auto end = text_.find_first_not_of("0123456789", at_ + 1);
        if (!joined || end == std::string::npos || end == at_ + 1 || text_[end] != '/')
            return first;
        ++at_;
        const auto numerator = plain_number();
        const auto part = numerator ? over(*numerator) : std::nullopt;
        return part ? std::optional(first + *part) : std::nullopt;
    }

    void number()
    {
        follows_ = last_ends_ != std::string::npos && text_.find_first_not_of(" .", last_ends_) == at_;
        const auto first = plain_number();
        const auto value = first && *first <= largest ? with_fraction(*first) : std::nullopt;
        if (!value || *value <= 0 || *value > largest) {
            unclear_ = true;
            return;
        }
        blanks();
        if (take_times())
            return packages(*value);
        if (rest().starts_with('-') && at_ + 1 < text_.size() && is_letter(text_[at_ + 1]))
            ++at_; // "12-oz"
        for (const auto& spelling : spellings)
            if (take(spelling.word))
                return amount({*value, spelling.unit});
        for (const auto word : containers)
            if (take(word))
                return inside(*value);
    }

    [[nodiscard]] bool is_number_of_packages(std::int64_t value) const
    {
        return value % billion == 0 && value >= 2 * billion && value <= most_packages * billion;
    }

    /// "6 - " of "6 - 12 fl oz". Behind an amount it tells how that is divided: the amount was that of the whole.
    void packages(std::int64_t value)
    {
        if (!contents_.each.empty()) {
            whole_known_ = true;
            return;
        }
        if (contents_.packages > 1 || containers_ || !is_number_of_packages(value))
            unclear_ = true;
        else
            contents_.packages = static_cast<int>(value / billion);
    }

    /// "8 bars": the number of what is inside.
    void inside(std::int64_t value)
    {
        if (contents_.packages > 1)
            return;
        if (!contents_.each.empty())
            whole_known_ = true;
        else if (!is_number_of_packages(value) || containers_)
            unclear_ = true;
        else
            containers_ = static_cast<int>(value / billion);
    }

    void word()
    {
        if (take("each") || take("ea")) {
            says_each_ = contents_.packages == 1;
            return;
        }
        if (take("net"))
            says_net_ = true;
        for (const auto word : containers)
            if (take(word) && contents_.packages == 1 && !containers_)
                unclear_ = true; // "12 fl oz cans": of how many?
        while (at_ < text_.size() && is_letter(text_[at_]))
            ++at_;
    }

    /// Takes an amount, unless one of its kind and system stands already; "1 lb 4 oz" is one amount.
    void amount(TradeAmount one)
    {
        const auto& known = info(one.unit);
        const bool directly = follows_;
        last_ends_ = at_;
        for (auto& other : contents_.each) {
            const auto& its = info(other.unit);
            if (its.goods != known.goods || its.system != known.system)
                continue;
            const bool last = &other == &contents_.each.back();
            if (last && directly && its.size > known.size && its.size % known.size == 0)
                join(other, one);
            return;
        }
        contents_.each.push_back(one);
    }

    void join(TradeAmount& larger, TradeAmount smaller)
    {
        const auto times = info(larger.unit).size / info(smaller.unit).size;
        const Wide sum = Wide{larger.nano} * times + smaller.nano;
        if (sum > largest)
            unclear_ = true;
        else
            larger = {static_cast<std::int64_t>(sum), smaller.unit};
    }

    /// A count beside a weight or a volume: without "net" it may be the number of packages.
    [[nodiscard]] bool counted_clearly() const
    {
        const auto counts = [](const TradeAmount& one) { return info(one.unit).goods == Goods::Pieces; };
        return says_net_ || std::ranges::none_of(contents_.each, counts) || std::ranges::all_of(contents_.each, counts);
    }

    std::string text_;
    std::size_t at_ = 0;
    Contents contents_;
    std::optional<int> containers_;
    std::size_t last_ends_ = std::string::npos; ///< behind the last amount
    bool follows_ = false;                      ///< the number that is read stands right behind it
    bool says_each_ = false;
    bool says_net_ = false;
    bool whole_known_ = false;
    bool unclear_ = false;
};

} // namespace

std::optional<Contents> contents_of(std::string_view printed)
{
    return Reader(printed).read();
}

std::optional<TradeAmount> amount_of(const Contents& contents, Goods goods, System system)
{
    const bool dry = std::ranges::any_of(
        contents.each, [](const TradeAmount& one) { return info(one.unit).goods == Goods::DryMeasure; });
    std::optional<TradeAmount> found;
    for (const auto& one : contents.each) {
        auto own = info(one.unit).goods;
        if (dry && own == Goods::LiquidVolume)
            own = Goods::DryMeasure;
        if (own == goods && (!found || info(one.unit).system == system))
            found = one;
    }
    return found;
}

Wide exact_size(TradeAmount amount, int packages)
{
    return Wide{amount.nano} * info(amount.unit).size * packages;
}

} // namespace core
