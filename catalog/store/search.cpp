#include "catalog/store/search.h"

#include "catalog/store/fold.h"
#include "catalog/store/little_words.h"
#include "catalog/store/search_answers.h"
#include "catalog/store/search_lists.h"
#include "catalog/store/search_memory.h"
#include "catalog/store/search_term.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <algorithm>
#include <deque>
#include <optional>
#include <stdexcept>
#include <utility>

namespace catalog {
namespace {

constexpr std::size_t longest_question = 256; // bytes
constexpr std::size_t most_terms = 8;
constexpr std::size_t most_near_words = 500; // of one typed word; the nearest ones
constexpr std::size_t words_at_once = 4000;
constexpr std::size_t loose_at_once = 200;

} // namespace

struct NameSearch::Inside {
    enum class Work { Nothing, Begin, Lists, LooseOnes, NearWords, NearLists };

    Inside(SQLite::Database& opened, int version_there, std::string where)
        : database(&opened), version(version_there), path(std::move(where)), answers(opened, version_there)
    {
    }

    /// Reads everything anew when something was written since.
    void keep_up()
    {
        const auto changes = database->getTotalChanges();
        if (memory && changes == changes_seen)
            return;
        changes_seen = changes;
        loaded = false;
        lists.reset();
        memory.emplace(*database, version);
        begin();
    }

    void begin()
    {
        left_out.clear();
        words = words_to_look_for(question, most_terms);
        look();
    }

    /// Looks for the words from the start.
    void look()
    {
        answers.clear();
        terms.clear();
        near_found.clear();
        fit = Fit::Exact;
        next_loose = 0;
        if (lists)
            lists->clear();
        work = words.empty() ? Work::Nothing : Work::Begin;
    }

    /// One portion; whether there is more to do.
    bool portion()
    {
        keep_up();
        if (!loaded) {
            loaded = !memory->step();
            return true;
        }
        if (answers.tell_one(wanted))
            return true;
        switch (work) {
        case Work::Nothing:
            return false;
        case Work::Begin:
            take_term();
            return true;
        case Work::Lists:
            if (!lists->step())
                work = Work::LooseOnes;
            return true;
        case Work::LooseOnes:
            look_at_loose();
            return true;
        case Work::NearWords:
            look_at_words();
            return true;
        case Work::NearLists:
            if (!lists->step())
                work = Work::LooseOnes;
            return true;
        }
        return false;
    }

    /// One word more: in a large catalog its sets take a while to lay out. Behind the last one the search begins.
    void take_term()
    {
        if (!lists)
            lists.emplace(*database);
        const auto nth = terms.size();
        if (nth < words.size()) {
            terms.emplace_back(words[nth], nth + 1 == words.size(), memory->products());
            return;
        }
        loose_fits.assign(memory->loose().size(), Fit::None);
        ask_lists();
    }

    /// Asks for the lists of every term that fit as well as is now looked for.
    void ask_lists()
    {
        work = Work::Lists;
        for (auto& term : terms)
            if (fit == Fit::Exact)
                ask_exact(term);
            else if (fit == Fit::Kind)
                ask_kinds(term, Fit::Kind, term.products(term.is_last() ? Fit::Beginning : Fit::Exact));
            else if (term.is_last())
                ask_beginning(term);
    }

    /// The kinds of food that fit so, beside the products that fit better.
    void ask_kinds(SearchTerm& term, Fit asked, const ProductBits& better)
    {
        auto& into = term.products(asked);
        into.add(better);
        for (std::size_t kind = 0; kind < memory->listed_kinds(); ++kind)
            if (term.kind_fit(memory->kinds()[kind], asked == Fit::Slips) == asked)
                lists->ask(memory->kind_list(kind), memory->kind_list(kind) + 1, into);
    }

    void ask_exact(SearchTerm& term)
    {
        const auto [first, last] = memory->words().same_as(term.word());
        lists->ask(first, last, term.products(Fit::Exact));
    }

    void ask_beginning(SearchTerm& term)
    {
        auto& into = term.products(Fit::Beginning);
        into.add(term.products(Fit::Exact));
        const auto [first, last] = term.word().size() <= 2 ? memory->beginning_lists(term.word())
                                                           : memory->words().beginning_with(term.word());
        lists->ask(first, last, into);
    }

    /// A portion of the loose products; behind the last one the tier is complete.
    void look_at_loose()
    {
        const auto& loose = memory->loose();
        const auto last = std::min(loose.size(), next_loose + loose_at_once);
        for (; next_loose < last; ++next_loose)
            if (loose_fits[next_loose] == Fit::None && (fit == Fit::Exact || fit == Fit::Slips)) // once without slips
                loose_fits[next_loose] = fit_of(loose[next_loose]);
        if (next_loose == loose.size())
            end_tier();
    }

    Fit fit_of(const LooseProduct& product)
    {
        auto worst = Fit::Exact;
        for (auto& term : terms) {
            const bool slips = fit == Fit::Slips;
            auto best = std::min(term.fit(product.name, slips), term.fit(product.brand, slips));
            for (const auto kind : {product.aisle_kind, product.category_kind})
                if (kind != SearchMemory::no_kind && best > Fit::Kind)
                    best = std::min(best, term.kind_fit(memory->kinds()[kind], slips));
            if (best != Fit::None)
                term.set_fits_loose();
            worst = std::max(worst, best);
        }
        return worst;
    }

    void end_tier()
    {
        ProductBits listed;
        bool first = true;
        for (auto& term : terms) {
            const bool words_alone = fit == Fit::Beginning && !term.is_last();
            const auto& fitting = term.products(words_alone ? Fit::Exact : fit);
            if (std::exchange(first, false))
                listed = fitting;
            else
                listed.keep(fitting);
        }
        listed.drop(memory->out_of_date());
        std::vector<const LooseProduct*> loose;
        for (std::size_t i = 0; i < loose_fits.size(); ++i)
            if (loose_fits[i] == fit)
                loose.push_back(&memory->loose()[i]);
        answers.add_tier(std::move(listed), std::move(loose));
        next_fit();
    }

    void next_fit()
    {
        next_loose = 0;
        if (fit == Fit::Exact || fit == Fit::Beginning) {
            fit = fit == Fit::Exact ? Fit::Beginning : Fit::Kind;
            ask_lists();
        } else if (fit == Fit::Kind && answers.count() < enough_without_slips) {
            fit = Fit::Slips;
            near_term = 0;
            begin_near();
        } else if (answers.count() == 0) {
            leave_out();
        } else {
            work = Work::Nothing;
        }
    }

    /// Nothing is found, slips included: looks for the words that fit something, without those that fit nothing at
    /// all. Each of them fits something then, so this happens once for a question.
    void leave_out()
    {
        std::vector<std::string> rest;
        std::vector<std::string> unfit;
        for (auto& term : terms)
            (fits_something(term) ? rest : unfit).push_back(term.word());
        if (rest.empty() || unfit.empty()) {
            work = Work::Nothing;
            return;
        }
        for (auto& word : unfit)
            if (std::find(left_out.begin(), left_out.end(), word) == left_out.end())
                left_out.push_back(std::move(word));
        words = std::move(rest);
        look();
    }

    bool fits_something(SearchTerm& term)
    {
        auto& listed = term.products(Fit::Slips);
        listed.drop(memory->out_of_date());
        return term.fits_loose() || listed.next_from(0) < listed.products();
    }

    /// Looks for words near the next term.
    void begin_near()
    {
        work = Work::NearWords;
        next_word = 0;
        near_found.assign(3, {});
        if (near_term < terms.size())
            near.emplace(terms[near_term].word(), terms[near_term].slips(), terms[near_term].is_last());
    }

    void look_at_words()
    {
        if (near_term == terms.size()) {
            work = Work::NearLists;
            return;
        }
        auto& term = terms[near_term];
        const auto& known = memory->words();
        for (std::size_t looked = 0; term.forgives() && next_word < known.size(); ++looked) {
            if (looked == words_at_once)
                return;
            const auto slips = near->look(known[next_word]);
            if (slips && near_found[*slips].size() < most_near_words)
                near_found[*slips].push_back(next_word);
            const auto passed = slips ? 0 : near->hopeless_after();
            next_word = passed == 0 ? next_word + 1 : known.behind(next_word, passed);
        }
        ask_near(term);
        ++near_term;
        begin_near();
    }

    void ask_near(SearchTerm& term)
    {
        auto& into = term.products(Fit::Slips);
        if (!term.forgives()) {
            into.add(term.products(Fit::Kind));
            return;
        }
        std::size_t asked = 0;
        for (const auto& same_slips : near_found)
            for (const auto word : same_slips)
                if (asked++ < most_near_words)
                    lists->ask(word, word + 1, into);
        ask_kinds(term, Fit::Slips, term.products(Fit::Kind));
    }

    SQLite::Database* database;
    int version;
    std::string path;
    int changes_seen = 0;
    bool loaded = false;
    std::optional<SearchMemory> memory;
    std::optional<SearchLists> lists;
    SearchAnswers answers;

    std::string question;           // folded
    std::vector<std::string> words; // of it, that are looked for
    std::vector<std::string> left_out;
    std::size_t wanted = first_wanted;
    Work work = Work::Nothing;
    Fit fit = Fit::Exact;         // what is looked for now
    std::deque<SearchTerm> terms; // a deque: lists are joined into them where they stand
    std::vector<Fit> loose_fits;
    std::size_t next_loose = 0;
    std::size_t near_term = 0;
    std::size_t next_word = 0;
    std::optional<NearWords> near;
    std::vector<std::vector<std::size_t>> near_found; // by their slips
};

NameSearch::NameSearch(SQLite::Database& database, int version, std::string path)
    : inside_(std::make_unique<Inside>(database, version, std::move(path)))
{
}
NameSearch::NameSearch(NameSearch&&) noexcept = default;
NameSearch& NameSearch::operator=(NameSearch&&) noexcept = default;
NameSearch::~NameSearch() = default;

void NameSearch::ask(std::string_view typed)
{
    inside_->question = fold(typed.substr(0, longest_question));
    inside_->wanted = first_wanted;
    inside_->begin();
}

void NameSearch::want(std::size_t answers)
{
    inside_->wanted = answers;
}

bool NameSearch::step(const std::function<bool()>& go_on)
{
    try {
        do {
            if (!inside_->portion())
                return true;
        } while (go_on());
        return false;
    } catch (const SQLite::Exception& error) {
        throw std::runtime_error(inside_->path + ": the catalog cannot be searched any more (" + error.what() +
                                 "); move it away and load your sheets again");
    }
}

const std::vector<FoundProduct>& NameSearch::found() const
{
    return inside_->answers.found();
}

std::size_t NameSearch::count() const
{
    return inside_->answers.count();
}

const std::vector<std::string>& NameSearch::left_out() const
{
    return inside_->left_out;
}

bool NameSearch::counted() const
{
    return inside_->work == Inside::Work::Nothing;
}

} // namespace catalog
