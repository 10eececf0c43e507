#include "catalog/read/release_json.h"

#include "catalog/read/release_table.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>

namespace catalog {
namespace {

using Json = nlohmann::json;

constexpr std::size_t longest_value = 8U << 20U; // bytes without anything that can be told; a food has some thousands
constexpr std::size_t deepest = 64;
constexpr std::size_t most_amounts = 200;
constexpr std::size_t foods_between_words = 1'024;

/// A field of a food that becomes one of its texts.
struct TextField {
    std::string_view key;
    ReleaseText text;
};
constexpr TextField text_fields[] = {{"description", ReleaseText::Name},
                                     {"brandOwner", ReleaseText::BrandOwner},
                                     {"brandName", ReleaseText::BrandName},
                                     {"ingredients", ReleaseText::Ingredients},
                                     {"notaSignificantSourceOf", ReleaseText::NotSignificant},
                                     {"servingSize", ReleaseText::ServingSize},
                                     {"servingSizeUnit", ReleaseText::ServingUnit},
                                     {"householdServingFullText", ReleaseText::Household},
                                     {"brandedFoodCategory", ReleaseText::Category},
                                     {"foodCategory", ReleaseText::Category},
                                     {"packageWeight", ReleaseText::NetQuantity},
                                     {"preparationStateCode", ReleaseText::Preparation}};

/// food_nutrient_derivation.csv: number and code.
Derivation derivation_of_code(std::string_view code)
{
    if (code == "LCCS" || code == "LCSA")
        return Derivation::PerServing;
    if (code == "LCSL")
        return Derivation::LessThan;
    if (code == "LCCD")
        return Derivation::PercentOnly;
    if (code == "LCGA")
        return Derivation::PerHundred;
    return code.empty() ? Derivation::None : Derivation::Other;
}

/// One entry of foodNutrients, nested as in downloads or flat as in the web service's answers.
struct Entry {
    std::optional<std::uint32_t> id;
    std::string amount;
    std::string derivation_code;
    std::optional<std::uint32_t> derivation_id;
    std::optional<std::uint32_t> percent;
};

/// Takes the parser's events. Depths: 1 the whole, 2 the list of foods, 3 a food, 4 its list of nutrients, 5 an entry,
/// 6 what is nested in it; a bare list of foods has one less. The whole is taken for a food until a list of them comes.
class Events : public nlohmann::json_sax<Json> {
public:
    Events(const std::function<void(const JsonFood&)>& take, const std::function<bool()>& go_on)
        : take_(take), go_on_(go_on)
    {
    }

    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t value) override { return scalar(std::to_string(value)); }
    bool number_unsigned(number_unsigned_t value) override { return scalar(std::to_string(value)); }
    bool number_float(number_float_t, const string_t& text) override { return scalar(text); }
    bool string(string_t& text) override { return scalar(text); }
    bool binary(binary_t&) override { return true; }
    bool key(string_t& name) override
    {
        keys_.back() = std::move(name);
        return true;
    }
    bool start_object(std::size_t) override
    {
        const bool is_food = keys_.empty() || ((!food_depth_ || food_depth_ == 1) && in_list_of_foods());
        if (!open(false))
            return false;
        if (is_food) {
            food_depth_ = keys_.size();
            food_ = {};
        } else if (food_depth_ && keys_.size() == *food_depth_ + 2 && keys_[*food_depth_ - 1] == "foodNutrients")
            entry_ = {};
        return true;
    }
    bool end_object() override
    {
        if (food_depth_ && keys_.size() == *food_depth_ + 2 && keys_[*food_depth_ - 1] == "foodNutrients")
            finish_entry();
        const bool ends_food = food_depth_ && keys_.size() == *food_depth_;
        close();
        if (!ends_food)
            return true;
        food_depth_.reset();
        if (keys_.empty() && food_.fdc_id == 0) // whatever it was, it was no food
            return true;
        take_(food_);
        return ++foods_ % foods_between_words != 0 || go_on_();
    }
    bool start_array(std::size_t) override { return open(true); }
    bool end_array() override
    {
        close();
        return true;
    }
    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception&) override
    {
        error_at_ = position;
        return false;
    }
    [[nodiscard]] std::optional<std::size_t> error_at() const { return error_at_; }
    [[nodiscard]] bool too_deep() const { return too_deep_; }
    [[nodiscard]] std::size_t foods() const { return foods_; }

private:
    /// Directly in {"BrandedFoods": [ ... ]}, {"foods": [ ... ]} or a bare list.
    [[nodiscard]] bool in_list_of_foods() const
    {
        if (keys_.empty() || !in_list_.back() || keys_.size() > 2)
            return false;
        return keys_.size() == 1 || keys_.front() == "BrandedFoods" || keys_.front() == "foods";
    }

    bool open(bool list)
    {
        too_deep_ = keys_.size() >= deepest;
        keys_.emplace_back();
        in_list_.push_back(list);
        return !too_deep_;
    }
    void close()
    {
        keys_.pop_back();
        in_list_.pop_back();
    }

    bool scalar(const std::string& text)
    {
        if (!food_depth_)
            return true;
        const auto below = keys_.size() - *food_depth_;
        if (below == 0)
            of_food(keys_.back(), text);
        else if (below >= 2 && keys_[*food_depth_ - 1] == "foodNutrients")
            of_entry(below, text);
        return true;
    }

    void of_food(const std::string& key, const std::string& text)
    {
        for (const auto& field : text_fields)
            if (field.key == key)
                food_.texts[static_cast<std::size_t>(field.text)] = text;
        if (key == "fdcId")
            food_.fdc_id = read_whole(text).value_or(0);
        else if (key == "gtinUpc")
            food_.code = text;
        else if (key == "marketCountry")
            food_.market = text;
        else if (key == "publicationDate" || key == "publishedDate")
            food_.published_on = read_day(text);
        else if (key == "modifiedDate")
            food_.modified_on = read_day(text);
    }

    void of_entry(std::size_t below, const std::string& text)
    {
        const auto& key = keys_.back();
        const auto& parent = keys_[*food_depth_ + 1];
        if (below == 2) {
            if (key == "amount" || key == "value")
                entry_.amount = text;
            else if (key == "nutrientId")
                entry_.id = read_whole(text);
            else if (key == "derivationId")
                entry_.derivation_id = read_whole(text);
            else if (key == "derivationCode")
                entry_.derivation_code = text;
            else if (key == "percentDailyValue")
                entry_.percent = read_whole(text);
        } else if (below == 3 && parent == "nutrient" && key == "id")
            entry_.id = read_whole(text);
        else if (below == 3 && parent == "foodNutrientDerivation" && key == "code")
            entry_.derivation_code = text;
    }

    void finish_entry()
    {
        const int nutrient =
            entry_.id ? release_nutrient_at(static_cast<int>(std::min<std::uint32_t>(*entry_.id, 1U << 20U))) : -1;
        if (nutrient < 0 || food_.amounts.size() >= most_amounts)
            return;
        const auto amount = read_amount(entry_.amount);
        if (!amount) {
            ++food_.bad_amounts;
            return;
        }
        const auto derivation =
            entry_.derivation_id ? derivation_of(*entry_.derivation_id) : derivation_of_code(entry_.derivation_code);
        const bool has_percent = entry_.percent && *entry_.percent > 0 && *entry_.percent < 255;
        food_.amounts.push_back({static_cast<std::uint8_t>(nutrient), derivation, *amount,
                                 has_percent ? static_cast<std::uint16_t>(*entry_.percent) : no_percent});
    }

    const std::function<void(const JsonFood&)>& take_;
    const std::function<bool()>& go_on_;
    std::vector<std::string> keys_; ///< the key under way on every depth
    std::vector<bool> in_list_;
    std::optional<std::size_t> food_depth_; ///< of the food under way
    JsonFood food_;
    Entry entry_;
    std::size_t foods_ = 0;
    std::optional<std::size_t> error_at_;
    bool too_deep_ = false;
};

/// The bytes of a stream one by one, as the parser asks for them. A value that never ends is cut off here.
class Letters {
public:
    explicit Letters(ByteStream& bytes) : bytes_(&bytes), buffer_(1U << 18U) {}

    /// The next byte; nothing at the end, or where reading had to stop.
    std::optional<char> next()
    {
        if (at_ == end_ && !fill())
            return std::nullopt;
        ++read_;
        return buffer_[at_++];
    }
    void something_was_told() { told_at_ = read_; }
    [[nodiscard]] bool endless() const { return read_ - told_at_ > longest_value; }
    [[nodiscard]] std::uint64_t read() const { return read_; }
    [[nodiscard]] const std::optional<core::Error>& broken() const { return broken_; }

private:
    bool fill()
    {
        if (broken_ || endless())
            return false;
        const auto got = bytes_->read(buffer_.data(), buffer_.size());
        if (!got) {
            broken_ = got.error();
            return false;
        }
        at_ = 0;
        end_ = *got;
        return end_ > 0;
    }
    ByteStream* bytes_;
    std::vector<char> buffer_;
    std::size_t at_ = 0;
    std::size_t end_ = 0;
    std::uint64_t read_ = 0;
    std::uint64_t told_at_ = 0;
    std::optional<core::Error> broken_;
};

/// An input iterator over Letters, as the library wants one.
class LetterIterator {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    LetterIterator() = default;
    explicit LetterIterator(Letters& letters) : letters_(&letters), now_(letters.next()) {}
    reference operator*() const { return *now_; }
    LetterIterator& operator++()
    {
        now_ = letters_->next();
        return *this;
    }
    LetterIterator operator++(int)
    {
        auto before = *this;
        ++*this;
        return before;
    }
    bool operator==(const LetterIterator& other) const { return now_.has_value() == other.now_.has_value(); }
    bool operator!=(const LetterIterator& other) const { return !(*this == other); }

private:
    Letters* letters_ = nullptr;
    std::optional<char> now_;
};

} // namespace

ReleaseTexts JsonFood::views() const
{
    ReleaseTexts views;
    std::copy(texts.begin(), texts.end(), views.begin());
    return views;
}

core::Result<bool> read_release_json(ByteStream& bytes, const std::string& source,
                                     const std::function<void(const JsonFood&)>& take,
                                     const std::function<bool(std::uint64_t)>& go_on)
{
    Letters letters(bytes);
    bool ended = false;
    const std::function<void(const JsonFood&)> take_and_note = [&](const JsonFood& food) {
        letters.something_was_told();
        take(food);
    };
    const std::function<bool()> asked = [&] {
        ended = !go_on(letters.read());
        return !ended;
    };
    Events events(take_and_note, asked);
    const bool parsed = Json::sax_parse(LetterIterator(letters), LetterIterator(), &events);
    if (letters.broken())
        return tl::make_unexpected(*letters.broken());
    if (ended)
        return false;
    if (letters.endless() || events.too_deep())
        return core::refuse(
            core::Error::Kind::TooLarge, "a food without end",
            core::Place{source, 0, {}, "byte " + std::to_string(letters.read()), "foods of at most 8 MB"});
    if (!parsed)
        return core::refuse(core::Error::Kind::TornFile, "no JSON",
                            core::Place{source, 0, {}, "byte " + std::to_string(letters.read()), {}});
    if (events.foods() == 0)
        return core::refuse(core::Error::Kind::NoFoods, "no list of foods, and no food",
                            core::Place{source, 0, {}, {}, {}});
    return true;
}

} // namespace catalog
