#include "core/label/ingredients.h"

#include "core/label/folded_words.h"
#include "core/label/list_heading.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

using Kind = ListHeading::Kind;

constexpr std::string_view bullet = "\u2022";

bool is_blank(char c)
{
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\v' || c == '\f';
}

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

/// One blank for many, none at the ends, and neither footnote marks nor a full stop nor a leading "and".
std::string tidy(std::string_view text)
{
    std::string tidied;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '*')
            continue;
        if (text.substr(i).starts_with("\u2020") || text.substr(i).starts_with("\u2021")) {
            i += 2;
            continue;
        }
        if (!is_blank(text[i]))
            tidied += text[i];
        else if (!tidied.empty() && tidied.back() != ' ')
            tidied += ' ';
    }
    while (tidied.ends_with(' ') || tidied.ends_with('.'))
        tidied.pop_back();
    for (const std::string_view joint : {"and/or ", "and ", "AND/OR ", "AND ", "And "})
        if (tidied.starts_with(joint))
            return tidied.substr(joint.size());
    return tidied;
}

/// The text without a letter that the cut went through.
std::string_view whole_letters(std::string_view text, std::size_t most)
{
    if (text.size() <= most)
        return text;
    while (most > 0 && (static_cast<unsigned char>(text[most]) & 0xC0U) == 0x80U)
        --most;
    return text.substr(0, most);
}

/// Walks through the text once.
class Taker {
public:
    explicit Taker(std::string_view text) : text_(text) {}

    IngredientList take()
    {
        while (at_ < text_.size())
            if (!take_heading())
                step();
        flush();
        end_statement();
        return std::move(list_);
    }

private:
    bool in_statement() const { return part_ != Kind::List && part_ != Kind::Little; }

    /// A heading where one may stand: at the beginning of a sentence, and "may contain" behind a comma.
    bool take_heading()
    {
        if (is_blank(text_[at_]) || !word_begins_)
            return false;
        word_begins_ = false;
        const bool anywhere = sentence_begins_ || in_statement();
        if (!anywhere && !after_comma_ && !may_be_contains_colon())
            return false;
        const auto heading = heading_of(text_.substr(at_));
        if (!heading || !may_begin(*heading))
            return false;
        begin(*heading);
        return true;
    }

    /// "salt CONTAINS: wheat": only this word, in capitals as statements are printed, is looked for within a sentence.
    bool may_be_contains_colon() const
    {
        const auto rest = text_.substr(at_);
        return rest.starts_with("CONTAINS") || rest.starts_with("Contains") || rest.starts_with("CONTIENE") ||
               rest.starts_with("INGREDIENT");
    }

    bool may_begin(const ListHeading& heading) const
    {
        const bool by_mark =
            text_[at_] == '*' || text_.substr(at_).starts_with("\u2020") || text_.substr(at_).starts_with("\u2021");
        if (heading.kind == Kind::Footnote && by_mark)
            return sentence_begins_ && !list_.all.empty() && is_blank(text_[at_ - 1]); // else it marks an ingredient
        if (sentence_begins_)
            return heading.kind != Kind::List || heading.colon || at_ == 0;
        if (in_statement()) // a statement ends where another part of the text begins
            return heading.kind == Kind::MayContain || (heading.kind == Kind::List && heading.colon);
        const bool outside = open_.empty();
        switch (heading.kind) {
        case Kind::MayContain:
        case Kind::Little:
            return outside && after_comma_;
        case Kind::Contains:
        case Kind::List:
            return outside && heading.colon;
        case Kind::Footnote:
            break;
        }
        return false;
    }

    void begin(const ListHeading& heading)
    {
        flush();
        end_statement();
        if (heading.kind != Kind::Little)
            open_.clear(); // brackets that were left open end here
        if (heading.kind == Kind::List) {
            if (list_.all.empty())
                first_spanish_ = heading.spanish;
            number_ = heading.spanish == first_spanish_ ? 0 : 1;
        }
        little_ = heading.kind == Kind::Little;
        part_ = heading.kind;
        at_ += heading.size;
        begin_ = at_;
        behind_.reset();
        sentence_begins_ = false;
        after_comma_ = false;
        word_begins_ = true;
        if (heading.size == 0)
            step(); // its words are part of what it begins
    }

    void step()
    {
        const char c = text_[at_];
        if (in_statement())
            statement_step(c);
        else
            list_step(c);
        if (!is_blank(c))
            after_comma_ = c == ',';
        if (c == '\n' || c == '.') // perhaps: a heading tells
            sentence_begins_ = true;
        word_begins_ = word_begins_ || !is_letter(c);
        if (is_letter(c) || is_digit(c))
            word_begins_ = false;
        ++at_;
    }

    /// A full stop that ends a sentence: not that of "2.5", "B. lactis" or "No. 5".
    bool ends_sentence() const
    {
        if (text_[at_] != '.' && text_[at_] != ';')
            return false;
        if (text_[at_] == ';')
            return !in_statement();
        if (at_ + 1 < text_.size() && (is_digit(text_[at_ + 1]) || text_[at_ + 1] == ','))
            return false;
        return !(at_ >= 1 && is_letter(text_[at_ - 1]) && (at_ == 1 || !is_letter(text_[at_ - 2])));
    }

    void statement_step(char c)
    {
        if (!is_blank(c))
            sentence_begins_ = false;
        if (!ends_sentence())
            return;
        end_statement();
        part_ = Kind::List;
        little_ = false;
        begin_ = at_ + 1;
        word_begins_ = true;
    }

    void list_step(char c)
    {
        if (c == '(' || c == '[' || c == '{')
            open_bracket();
        else if (c == ')' || c == ']' || c == '}')
            close_bracket();
        else if (text_.substr(at_).starts_with(bullet))
            at_bullet();
        else if (ends_sentence() || c == ':' || c == '|' || (c == ',' && !within_number()))
            end_ingredient(c);
        else if (!is_blank(c))
            sentence_begins_ = false;
    }

    void at_bullet()
    {
        end_ingredient(',');
        at_ += bullet.size() - 1; // the last of its bytes is stepped over as any other
        begin_ = at_ + 1;
    }

    bool within_number() const
    {
        return at_ > 0 && at_ + 1 < text_.size() && is_digit(text_[at_ - 1]) && is_digit(text_[at_ + 1]);
    }

    void open_bracket()
    {
        const auto owner = flush();
        open_.push_back(owner ? owner : behind_);
        behind_.reset();
        begin_ = at_ + 1;
        sentence_begins_ = false;
    }

    void close_bracket()
    {
        flush();
        behind_.reset();
        if (!open_.empty()) {
            behind_ = open_.back();
            open_.pop_back();
        }
        begin_ = at_ + 1;
        sentence_begins_ = open_.empty();
    }

    void end_ingredient(char c)
    {
        flush();
        behind_.reset();
        begin_ = at_ + 1;
        if (c == '.' && open_.empty())
            little_ = false;
        sentence_begins_ = c == '.' || c == ';';
    }

    /// Ends the ingredient that is being read; which one it is, or nothing.
    std::optional<std::size_t> flush()
    {
        if (in_statement() || begin_ >= at_)
            return std::nullopt;
        std::string printed = tidy(text_.substr(begin_, at_ - begin_));
        begin_ = at_;
        if (!std::ranges::any_of(printed, is_letter))
            return std::nullopt;
        if (behind_) { // "cheese (milk, salt) powder"
            list_.all[*behind_].printed += " " + printed;
            return std::exchange(behind_, std::nullopt);
        }
        const auto within = open_.empty() ? std::nullopt : open_.back();
        list_.all.push_back({std::move(printed), open_.size(), within, little_, number_});
        return list_.all.size() - 1;
    }

    void end_statement()
    {
        if (!in_statement() || begin_ >= at_)
            return;
        std::string printed = tidy(text_.substr(begin_, at_ - begin_));
        begin_ = at_;
        if (!std::ranges::any_of(printed, is_letter))
            return;
        if (part_ == Kind::Contains)
            list_.contains.push_back(std::move(printed));
        else if (part_ == Kind::MayContain)
            list_.may_contain.push_back(std::move(printed));
        else
            list_.footnotes.push_back(std::move(printed));
    }

    std::string_view text_;
    IngredientList list_;
    Kind part_ = Kind::List;
    std::size_t at_ = 0;
    std::size_t begin_ = 0;                        ///< of what is being read
    std::vector<std::optional<std::size_t>> open_; ///< the owners of the open brackets
    std::optional<std::size_t> behind_;            ///< the ingredient whose bracket was just closed
    std::size_t number_ = 0;
    bool first_spanish_ = false; ///< the language that the text begins with
    bool little_ = false;
    bool sentence_begins_ = true;
    bool after_comma_ = false;
    bool word_begins_ = true;
};

bool is_partially(std::string_view word)
{
    return word == "partially" || word == "partly" || word == "parcialmente" || word == "partiellement";
}

bool is_hydrogenated(std::string_view word)
{
    return word.starts_with("hydrogenat") || word.starts_with("hydrogenis") || word.starts_with("hydrogeniz") ||
           word.starts_with("hidrogenad") || word.starts_with("hydrogene");
}

} // namespace

IngredientList take_apart(std::string_view printed)
{
    const auto text = whole_letters(printed, longest_ingredient_list);
    auto list = Taker(text).take();
    list.cut = text.size() < printed.size();
    return list;
}

std::vector<std::string> partially_hydrogenated(const IngredientList& list)
{
    std::vector<std::string> found;
    for (const auto& ingredient : list.all) {
        const auto words = folded_words(ingredient.printed);
        for (std::size_t i = 0; i + 1 < words.size(); ++i) {
            if (!is_partially(words[i].text) || !is_hydrogenated(words[i + 1].text))
                continue;
            // "soybean oil (partially hydrogenated)" is told with its oil.
            const bool alone = words.size() == 2 && ingredient.within;
            auto name =
                alone ? list.all[*ingredient.within].printed + " (" + ingredient.printed + ")" : ingredient.printed;
            if (std::ranges::find(found, name) == found.end())
                found.push_back(std::move(name));
            break;
        }
    }
    return found;
}

} // namespace core
