#include "core/label/allergens.h"

#include "core/label/allergens_table.h"
#include "core/label/folded_words.h"
#include "core/label/phrase_book.h"

#include <algorithm>
#include <set>
#include <span>
#include <tuple>

namespace core {
namespace {

using Kind = AllergenRow::Kind;
using Where = AllergenPlace;
using Words = std::vector<FoldedWord>;

const PhraseBook& book()
{
    static const PhraseBook known = [] {
        std::vector<std::string_view> phrases;
        for (const auto& row : allergen_rows())
            phrases.push_back(row.words);
        return PhraseBook(phrases);
    }();
    return known;
}

/// A part of a word that puts its allergen in doubt where the whole word is not known: "milkpowder", "wheatlets".
struct Stem {
    enum class At { Anywhere, Front, Back };
    std::string_view letters;
    At at;
    Allergen allergen;
};

// Common practice: better once too often than once too little. Words that hold such letters by chance have rows.
constexpr Stem stems[] = {
    {"milk", Stem::At::Anywhere, Allergen::Milk},
    {"cheese", Stem::At::Anywhere, Allergen::Milk},
    {"whey", Stem::At::Anywhere, Allergen::Milk},
    {"casein", Stem::At::Anywhere, Allergen::Milk},
    {"yogurt", Stem::At::Anywhere, Allergen::Milk},
    {"cream", Stem::At::Front, Allergen::Milk},
    {"butter", Stem::At::Front, Allergen::Milk},
    {"egg", Stem::At::Front, Allergen::Egg},
    {"ovo", Stem::At::Front, Allergen::Egg},
    {"albumin", Stem::At::Back, Allergen::Egg},
    {"fish", Stem::At::Anywhere, Allergen::Fish},
    {"anchov", Stem::At::Front, Allergen::Fish},
    {"salmon", Stem::At::Front, Allergen::Fish},
    {"shrimp", Stem::At::Anywhere, Allergen::Crustaceans},
    {"lobster", Stem::At::Anywhere, Allergen::Crustaceans},
    {"prawn", Stem::At::Anywhere, Allergen::Crustaceans},
    {"crab", Stem::At::Front, Allergen::Crustaceans},
    {"almond", Stem::At::Anywhere, Allergen::TreeNuts},
    {"cashew", Stem::At::Anywhere, Allergen::TreeNuts},
    {"hazelnut", Stem::At::Anywhere, Allergen::TreeNuts},
    {"walnut", Stem::At::Anywhere, Allergen::TreeNuts},
    {"pecan", Stem::At::Front, Allergen::TreeNuts},
    {"pistachi", Stem::At::Front, Allergen::TreeNuts},
    {"macadamia", Stem::At::Anywhere, Allergen::TreeNuts},
    {"nut", Stem::At::Back, Allergen::TreeNuts},
    {"peanut", Stem::At::Anywhere, Allergen::Peanuts},
    {"wheat", Stem::At::Anywhere, Allergen::Wheat},
    {"semolina", Stem::At::Anywhere, Allergen::Wheat},
    {"bread", Stem::At::Anywhere, Allergen::Wheat},
    {"soy", Stem::At::Front, Allergen::Soybeans},
    {"tofu", Stem::At::Front, Allergen::Soybeans},
    {"sesam", Stem::At::Anywhere, Allergen::Sesame},
    {"tahin", Stem::At::Front, Allergen::Sesame},
};

bool has_stem(std::string_view word, const Stem& stem)
{
    switch (stem.at) {
    case Stem::At::Anywhere:
        return word.find(stem.letters) != std::string_view::npos;
    case Stem::At::Front:
        return word.starts_with(stem.letters);
    case Stem::At::Back:
        break;
    }
    return word.ends_with(stem.letters);
}

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> words)
{
    return std::ranges::find(words, word) != words.end();
}

/// How many words before a phrase leave open whether it is meant: "vegan cream", "no milk", "dairy free cheese".
std::size_t doubting_words(const Words& words, std::size_t first)
{
    if (first == 0)
        return 0;
    const std::string_view before = words[first - 1].text;
    if (is_one_of(before, {"vegan", "no", "non", "without", "not", "imitation", "substitute", "sin", "san"}))
        return 1;
    if (first < 2)
        return 0;
    const std::string_view two_before = words[first - 2].text;
    const bool based = before == "based" && two_before == "plant";
    const bool free = before == "free" && is_one_of(two_before, {"dairy", "milk", "egg", "wheat", "soy", "nut",
                                                                 "peanut", "sesame", "fish", "shellfish", "allergen"});
    return based || free ? 2 : 0;
}

bool ends_in_oil(const Words& words)
{
    return !words.empty() && is_one_of(words.back().text, {"oil", "shortening", "aceite", "huile"});
}

/// The plain name of a plant whose oil is most often highly refined, not in the plural: "peanuts" are no oil.
bool may_be_an_oil(const Words& words, const Phrase& phrase)
{
    const auto& word = words[phrase.first];
    return phrase.count == 1 && word.end - word.begin == word.text.size() &&
           is_one_of(word.text, {"soybean", "soy", "soya", "peanut"});
}

/// Collects the namings of one label.
class Reader {
public:
    explicit Reader(const IngredientList& list) : list_(list), parts_(list.all.size(), 0)
    {
        for (const auto& ingredient : list.all) {
            oils_.push_back(ends_in_oil(folded_words(ingredient.printed)));
            if (ingredient.within)
                ++parts_[*ingredient.within];
        }
    }

    void read_ingredients()
    {
        for (std::size_t i = 0; i < list_.all.size(); ++i)
            read_ingredient(list_.all[i], parts_[i] > 1);
        for (const auto& footnote : list_.footnotes)
            read_ingredient({footnote, 0, std::nullopt, false, 0}, false);
    }

    /// A statement, part by part: "coconut, milk" is not "coconut milk".
    void read_statement(std::string_view text, Where place)
    {
        while (!text.empty()) {
            const auto end = std::min(text.find_first_of(",;.:()[]{}|\n"), text.size());
            read_part(text.substr(0, end), place);
            text.remove_prefix(std::min(end + 1, text.size()));
        }
    }

    /// The statement as it was entered, "Wheat, milk", and the notes that were entered with it.
    void read_entered(const std::string& statement)
    {
        const auto parts = take_apart("Contains: " + statement);
        for (const auto& text : parts.contains)
            read_statement(text, Where::Statement);
        for (const auto& more : parts.all)
            read_statement(more.printed, Where::Statement);
        for (const auto& note : parts.may_contain)
            read_statement(note, Where::MayContain);
    }

    std::vector<AllergenNaming> take()
    {
        std::ranges::stable_sort(named_, {}, [](const AllergenNaming& n) { return std::tuple(n.allergen, n.place); });
        return std::move(named_);
    }

private:
    /// Whatever word for an allergen stands in a statement, it is meant.
    void read_part(std::string_view text, Where place)
    {
        const Words words = folded_words(text);
        for (const auto& phrase : book().all_in(words))
            for (const std::size_t row : phrase.rows)
                if (allergen_rows()[row].kind == Kind::Names ||
                    (allergen_rows()[row].kind == Kind::MayHold && phrase_names_nothing(phrase)))
                    add(allergen_rows()[row].allergen, place, printed(text, words, phrase));
        read_stems(text, words, place);
    }

    static bool phrase_names_nothing(const Phrase& phrase)
    {
        return std::ranges::none_of(phrase.rows,
                                    [](std::size_t row) { return allergen_rows()[row].kind == Kind::Names; });
    }

    static std::string printed(std::string_view text, const Words& words, const Phrase& phrase)
    {
        const auto begin = words[phrase.first].begin;
        return std::string(text.substr(begin, words[phrase.first + phrase.count - 1].end - begin));
    }

    void add(Allergen allergen, Where place, std::string words)
    {
        std::string folded;
        for (const auto& word : folded_words(words))
            folded += word.text + " ";
        if (said_.emplace(allergen, place, std::move(folded)).second)
            named_.push_back({allergen, place, std::move(words)});
    }

    /// "vegetable oil (soybean, canola)", "soybean and/or canola oil".
    bool is_oil(const Ingredient& ingredient, const Words& words, const Phrase& phrase) const
    {
        if (!may_be_an_oil(words, phrase))
            return false;
        if (ingredient.within && oils_[*ingredient.within])
            return true;
        const auto next = phrase.first + 1;
        return next < words.size() && is_one_of(words[next].text, {"and", "or"}) && ends_in_oil(words);
    }

    /// `told`: what the ingredient is made of stands behind it (21 CFR 101.4(b)(2)), so its own name leaves no doubt.
    void read_ingredient(const Ingredient& ingredient, bool told)
    {
        const Words words = folded_words(ingredient.printed);
        const bool may_contain = words.size() > 2 && words[0].text == "may" && words[1].text == "contain";
        for (const auto& phrase : book().all_in(words)) {
            const std::size_t before = doubting_words(words, phrase.first);
            const bool doubted = may_contain || before > 0 || is_oil(ingredient, words, phrase);
            const Phrase quoted{phrase.first - before, phrase.count + before, phrase.rows};
            for (const std::size_t row : phrase.rows) {
                const auto& known = allergen_rows()[row];
                if (known.kind == Kind::NotThis || (known.kind == Kind::MayHold && told))
                    continue;
                // "flour" with nothing before it is wheat flour: 21 CFR 137.105.
                const bool plain_flour = words[phrase.first].text == "flour" && phrase.count == 1 && phrase.first == 0;
                const bool named = (known.kind == Kind::Names && !doubted) || plain_flour;
                add(known.allergen, named ? Where::Ingredients : Where::InDoubt,
                    printed(ingredient.printed, words, quoted));
            }
        }
        read_stems(ingredient.printed, words, Where::InDoubt);
    }

    void read_stems(std::string_view text, const Words& words, Where place)
    {
        std::size_t next = 0;
        const auto phrases = book().all_in(words);
        for (std::size_t i = 0; i < words.size(); ++i) {
            while (next < phrases.size() && phrases[next].first + phrases[next].count <= i)
                ++next;
            if (next < phrases.size() && phrases[next].first <= i)
                continue;
            for (const auto& stem : stems)
                if (has_stem(words[i].text, stem))
                    add(stem.allergen, place, printed(text, words, {i, 1, {}}));
        }
    }

    const IngredientList& list_;
    std::vector<bool> oils_;         ///< whether each is called an oil
    std::vector<std::size_t> parts_; ///< how many ingredients each is made of
    std::set<std::tuple<Allergen, AllergenPlace, std::string>> said_;
    std::vector<AllergenNaming> named_;
};

std::string joined(const std::vector<std::string>& texts)
{
    std::string all;
    for (const auto& text : texts)
        all += (all.empty() ? "" : "; ") + text;
    return all;
}

} // namespace

bool AllergenReading::names(Allergen allergen, AllergenPlace place) const
{
    return std::ranges::any_of(named,
                               [&](const AllergenNaming& n) { return n.allergen == allergen && n.place == place; });
}

Date sesame_named_from()
{
    static const Date day = Date::parse("2023-01-01").value();
    return day;
}

AllergenReading allergens_of(const Label& label, const IngredientList& list, Date entered_on)
{
    Reader reader(list);
    reader.read_ingredients();
    reader.read_statement(joined(list.contains), Where::StatementInText);
    reader.read_statement(joined(list.may_contain), Where::MayContain);
    AllergenReading reading;
    reading.statement_in_text = joined(list.contains);
    reading.may_contain = joined(list.may_contain);
    if (label.contains) {
        reading.statement = *label.contains;
        reader.read_entered(*label.contains);
    }
    reading.named = reader.take();
    reading.statement_recorded = label.contains.has_value();
    reading.ingredients_recorded = label.ingredients.has_value();
    reading.sesame_need_not_be_named = entered_on < sesame_named_from();
    return reading;
}

AllergenReading allergens_of(const Label& label, Date entered_on)
{
    return allergens_of(label, label.ingredients ? take_apart(*label.ingredients) : IngredientList{}, entered_on);
}

} // namespace core
