#include "ui/words/plain.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace ui {
namespace {

struct Counted {
    std::string_view word;
    std::size_t syllables;
};

/// English words whose spelling misleads the rules below. Source of each count: The CMU Pronouncing Dictionary
/// (Carnegie Mellon University), the shortest pronunciation, as Flesch asks for.
constexpr auto exceptions = std::to_array<Counted>({
    {"aisle", 1},    {"beyond", 2},    {"biotin", 3},    {"camera", 2},    {"different", 2},
    {"eaten", 2},    {"elsewhere", 2}, {"equal", 2},     {"every", 2},     {"fluid", 2},
    {"heaviest", 3}, {"household", 2}, {"iodine", 3},    {"minerals", 2},  {"natural", 2},
    {"niacin", 3},   {"partially", 2}, {"previous", 3},  {"recipe", 3},    {"recipes", 3},
    {"sesame", 3},   {"something", 2}, {"sometimes", 2}, {"statement", 2}, {"thiamin", 3},
});

/// Words of three syllables or more that the label prints. Source: 21 CFR 101.9(c), (d), (e) and (f).
constexpr auto english_label_words = std::to_array<std::string_view>({
    "alcohol",     "biotin",    "calcium",   "calorie",     "calories",    "carbohydrate",    "carbohydrates",
    "cholesterol", "chromium",  "container", "containers",  "contributes", "dietary",         "general",
    "insoluble",   "iodine",    "magnesium", "manganese",   "molybdenum",  "monounsaturated", "niacin",
    "nutrient",    "nutrients", "nutrition", "pantothenic", "phosphorus",  "polyunsaturated", "potassium",
    "riboflavin",  "saturated", "selenium",  "significant", "sodium",      "soluble",         "thiamin",
    "vitamin",     "vitamins",
});

/// Source: the bilingual format of 21 CFR 101.9(d)(14), as FDA's sample labels word it (from memory).
constexpr auto spanish_label_words = std::to_array<std::string_view>({
    "alcohol",     "alimento",    "azúcar",         "azúcares",       "añadidas",      "añadidos",  "biotina",
    "caloría",     "calorías",    "cantidad",       "carbohidrato",   "carbohidratos", "cloruro",   "colesterol",
    "colina",      "dietética",   "envase",         "fluoruro",       "folato",        "fósforo",   "insoluble",
    "magnesio",    "manganeso",   "molibdeno",      "monoinsaturada", "niacina",       "nutrición", "nutriente",
    "nutrientes",  "pantoténico", "poliinsaturada", "porciones",      "potasio",       "proteína",  "proteínas",
    "riboflavina", "saturada",    "selenio",        "significativa",  "soluble",       "tamaño",    "tiamina",
    "totales",     "vitamina",    "vitaminas",
});

/// What ends with a point and ends no sentence.
constexpr auto abbreviations = std::to_array<std::string_view>({"aprox.", "fl.", "oz.", "lb.", "U.S."});

/// Letters that the rules tell apart: lower case, one byte each. Accented vowels of Spanish become digits.
constexpr std::string_view open_vowels = "aeo145"; // 1 á, 4 é, 5 ó
constexpr std::string_view accented_closed = "23"; // 2 í, 3 ú
constexpr std::string_view closed_vowels = "iu";

struct Letter {
    std::string_view utf8;
    char plain;
};
constexpr auto letters = std::to_array<Letter>({
    {"á", '1'},
    {"é", '4'},
    {"í", '2'},
    {"ó", '5'},
    {"ú", '3'},
    {"ü", 'w'},
    {"ñ", 'n'},
    {"Á", '1'},
    {"É", '4'},
    {"Í", '2'},
    {"Ó", '5'},
    {"Ú", '3'},
    {"Ü", 'w'},
    {"Ñ", 'n'},
});

constexpr std::string_view signs_around = ".,;:!?()[]{}\"'*-/";
constexpr auto wide_signs_around =
    std::to_array<std::string_view>({"“", "”", "‘", "’", "«", "»", "¿", "¡", "–", "—", "…"});

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_upper(char c)
{
    return c >= 'A' && c <= 'Z';
}

bool is_ascii_letter(char c)
{
    return is_upper(c) || (c >= 'a' && c <= 'z');
}

char lower(char c)
{
    return is_upper(c) ? static_cast<char>(c - 'A' + 'a') : c;
}

bool has(std::string_view set, char c)
{
    return set.find(c) != std::string_view::npos;
}

/// Lower case; letters of several bytes stay, but for capitals with an accent.
std::string lowered(std::string_view word)
{
    std::string low(word);
    std::ranges::transform(low, low.begin(), lower);
    for (std::size_t i = 7; i < letters.size(); ++i)
        if (const auto at = low.find(letters[i].utf8); at != std::string::npos)
            low.replace(at, letters[i].utf8.size(), letters[i - 7].utf8);
    return low;
}

/// Takes signs off both ends.
std::string_view bare(std::string_view word)
{
    for (bool more = true; more && !word.empty();) {
        more = false;
        const auto cut = [&](std::string_view sign) {
            if (word.starts_with(sign))
                word.remove_prefix(sign.size()), more = true;
            if (word.ends_with(sign))
                word.remove_suffix(sign.size()), more = true;
        };
        for (const char& sign : signs_around)
            cut({&sign, 1});
        for (const auto sign : wide_signs_around)
            cut(sign);
    }
    return word;
}

/// What stands between blanks, no-break ones among them.
std::vector<std::string> chunks_of(std::string_view text)
{
    constexpr std::string_view no_break = "\u00A0";
    std::vector<std::string> chunks(1);
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool wide_blank = text.substr(at).starts_with(no_break);
        at += wide_blank ? 1 : 0;
        if (!wide_blank && text[at] != ' ' && text[at] != '\n')
            chunks.back() += text[at];
        else if (!chunks.back().empty())
            chunks.emplace_back();
    }
    if (chunks.back().empty())
        chunks.pop_back();
    return chunks;
}

bool ends_sentence(std::string_view chunk)
{
    if (std::ranges::find(abbreviations, chunk) != abbreviations.end())
        return false;
    for (bool more = true; more;) {
        more = false;
        for (const std::string_view closing : {")", "\"", "”", "»", "’"})
            if (chunk.ends_with(closing))
                chunk.remove_suffix(closing.size()), more = true;
    }
    return chunk.ends_with('.') || chunk.ends_with('?') || chunk.ends_with('!') || chunk.ends_with("…");
}

/// Letters that say nothing aloud by themselves, or are read letter by letter: figures, signs, units, abbreviations.
bool is_code(std::string_view word)
{
    const bool digits = std::ranges::any_of(word, is_digit);
    const bool capitals = word.size() > 1 && std::ranges::all_of(word, is_upper);
    const bool unit = word == "mL" || word == "g" || word == "mg" || word == "mcg" || word == "oz" || word == "lb";
    return digits || capitals || unit;
}

bool is_vowel(char c)
{
    return has("aeiouy", c);
}

std::size_t vowel_groups(std::string_view word)
{
    std::size_t groups = 0;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (is_vowel(word[i]) && (i == 0 || !is_vowel(word[i - 1])))
            ++groups;
    return groups;
}

/// A last e, es or ed that is not heard: "size", "names", "rounded" but not "counted", "little", "boxes".
bool has_silent_end(std::string_view word)
{
    const auto before = [&](std::size_t from_end) {
        return word.size() > from_end ? word[word.size() - 1 - from_end] : ' ';
    };
    if (word.ends_with("e"))
        return !is_vowel(before(1)) && !(before(1) == 'l' && !is_vowel(before(2)));
    if (word.ends_with("es")) {
        const bool hissed = has("sxzcg", before(2)) || word.ends_with("ches") || word.ends_with("shes");
        return !is_vowel(before(2)) && !hissed && !(before(2) == 'l' && !is_vowel(before(3)));
    }
    if (word.ends_with("ed"))
        return !is_vowel(before(2)) && !has("td", before(2)) &&
               !(before(2) == 'l' && before(3) != 'l' && !is_vowel(before(3)));
    return false;
}

/// Two vowels beside each other that are two syllables: "diet", "ingredient", "being".
std::size_t vowels_apart(std::string_view word)
{
    std::size_t apart = 0;
    for (const std::string_view pair :
         {"iet", "ient", "ium", "iu", "ying", "eing", "uing", "iar", "ior", "eate", "ual"})
        if (word.find(pair) != std::string_view::npos) {
            ++apart;
            break;
        }
    return apart;
}

std::size_t one_english_part(const std::string& part)
{
    const auto found = std::ranges::find(exceptions, std::string_view(part), &Counted::word);
    if (found != exceptions.end())
        return found->syllables;
    std::size_t count = vowel_groups(part) + vowels_apart(part);
    if (has_silent_end(part) && count > 1)
        --count;
    return std::max<std::size_t>(count, 1);
}

/// One byte a letter, as the rules of vowels want them; an u that is not heard and an h between vowels are left out.
std::string spanish_letters(std::string_view word)
{
    std::string low = lowered(word);
    for (const auto& letter : letters)
        for (auto at = low.find(letter.utf8); at != std::string::npos; at = low.find(letter.utf8))
            low.replace(at, letter.utf8.size(), 1, letter.plain);
    std::string heard;
    for (std::size_t i = 0; i < low.size(); ++i) {
        const char before = i > 0 ? low[i - 1] : ' ';
        const char after = i + 1 < low.size() ? low[i + 1] : ' ';
        const bool silent_u = low[i] == 'u' && ((before == 'g' && has("ei42", after)) || before == 'q');
        const bool silent_h = low[i] == 'h' && before != 'c';
        if (low[i] == 'y' && !is_ascii_letter(after) && !has(open_vowels, after) && !has(accented_closed, after))
            heard += 'i'; // "y", "hay"; before a vowel it is a consonant
        else if (low[i] == 'w')
            heard += 'u'; // ü
        else if (!silent_u && !silent_h)
            heard += low[i];
    }
    return heard;
}

} // namespace

std::size_t english_syllables(std::string_view word)
{
    if (is_code(bare(word)))
        return 1;
    std::size_t count = 0;
    std::string part;
    for (const char c : lowered(word) + "-") {
        if (is_ascii_letter(c))
            part += c;
        else if ((c == '-' || c == '/') && !part.empty()) {
            count += one_english_part(part);
            part.clear();
        }
    }
    return std::max<std::size_t>(count, 1);
}

std::size_t spanish_syllables(std::string_view word)
{
    if (is_code(bare(word)))
        return 1;
    std::size_t count = 0;
    char held = ' '; // the last closed vowel of a run without another vowel so far
    bool in_run = false;
    bool has_kernel = false;
    for (const char c : spanish_letters(word) + " ") {
        const bool kernel = has(open_vowels, c) || has(accented_closed, c);
        const bool closed = has(closed_vowels, c);
        if (kernel) {
            ++count;
            has_kernel = true;
        } else if (closed && in_run && held == c) {
            ++count; // the same vowel twice is apart: "chiita"
        } else if (!closed && in_run && !has_kernel) {
            ++count; // a run of closed vowels alone is one syllable: "muy", "cuidar"
        }
        in_run = kernel || closed;
        has_kernel = in_run && has_kernel;
        held = closed ? c : ' ';
    }
    return std::max<std::size_t>(count, 1);
}

bool is_label_word(std::string_view word, std::string_view language_code)
{
    const auto low = lowered(bare(word));
    if (language_code == "es")
        return std::ranges::find(spanish_label_words, low) != spanish_label_words.end();
    return std::ranges::find(english_label_words, low) != english_label_words.end();
}

PlainCount plain_count(std::string_view text, std::string_view language_code)
{
    PlainCount count;
    bool open = false;
    for (const auto& chunk : chunks_of(text)) {
        if (!bare(chunk).empty()) {
            const auto syllables = language_code == "es" ? spanish_syllables(chunk) : english_syllables(chunk);
            ++count.words;
            count.syllables += syllables;
            count.label_syllables +=
                is_label_word(chunk, language_code) ? std::min<std::size_t>(syllables, 2) : syllables;
            open = true;
        }
        if (open && ends_sentence(chunk)) {
            ++count.sentences;
            open = false;
        }
    }
    count.sentences += open ? 1 : 0;
    return count;
}

double flesch_kincaid_grade(std::size_t sentences, std::size_t words, std::size_t syllables)
{
    const auto all = static_cast<double>(words);
    return 0.39 * all / static_cast<double>(sentences) + 11.8 * static_cast<double>(syllables) / all - 15.59;
}

double inflesz(std::size_t sentences, std::size_t words, std::size_t syllables)
{
    const auto all = static_cast<double>(words);
    return 206.835 - 62.3 * static_cast<double>(syllables) / all - all / static_cast<double>(sentences);
}

} // namespace ui
