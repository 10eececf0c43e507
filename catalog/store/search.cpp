#include "catalog/store/search.h"

#include "catalog/store/fold.h"
#include "catalog/store/row.h"
#include "catalog/store/search_lists.h"
#include "catalog/store/search_memory.h"
#include "catalog/store/search_rows.h"
#include "catalog/store/search_term.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <algorithm>
#include <array>
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

/// The products that fit equally well, and how far they are told.
struct Tier {
    ProductBits listed;
    std::vector<const LooseProduct*> loose; // by name
    std::size_t next_listed = 0;
    std::size_t next_loose = 0;
};

bool in_order(const LooseProduct* a, const LooseProduct* b)
{
    return a->name != b->name ? a->name < b->name : a->key < b->key;
}

} // namespace

struct NameSearch::Inside {
    enum class Work { Nothing, Begin, Lists, LooseOnes, NearWords, NearLists };

    Inside(SQLite::Database& opened, int version_there, std::string where)
        : database(&opened), version(version_there), path(std::move(where)), rows(opened, version_there)
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
        found.clear();
        tiers.clear();
        terms.clear();
        near_found.clear();
        count = 0;
        fit = Fit::Exact;
        next_loose = 0;
        if (lists)
            lists->clear();
        work = question.empty() ? Work::Nothing : Work::Begin;
    }

    /// One portion; whether there is more to do.
    bool portion()
    {
        keep_up();
        if (!loaded) {
            loaded = !memory->step();
            return true;
        }
        if (tell_one())
            return true;
        switch (work) {
        case Work::Nothing:
            return false;
        case Work::Begin:
            take_terms();
            ask_lists();
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

    void take_terms()
    {
        if (!lists)
            lists.emplace(*database);
        std::vector<std::string_view> words;
        each_word(question, [&](std::string_view word) {
            if (words.size() < most_terms)
                words.push_back(word);
        });
        for (std::size_t i = 0; i < words.size(); ++i)
            terms.emplace_back(words[i], i + 1 == words.size(), memory->products());
        loose_fits.assign(memory->loose().size(), Fit::None);
    }

    /// Asks for the lists of every term that fit as well as is now looked for.
    void ask_lists()
    {
        work = Work::Lists;
        for (auto& term : terms)
            if (fit == Fit::Exact)
                ask_exact(term);
            else if (term.is_last())
                ask_beginning(term);
    }

    void ask_kinds(SearchTerm& term, Fit asked)
    {
        for (std::size_t kind = 0; kind < memory->listed_kinds(); ++kind)
            if (term.kind_fit(memory->kinds()[kind], asked == Fit::Slips) == asked)
                lists->ask(memory->kind_list(kind), memory->kind_list(kind) + 1, term.products(asked));
    }

    void ask_exact(SearchTerm& term)
    {
        const auto [first, last] = memory->words().same_as(term.word());
        lists->ask(first, last, term.products(Fit::Exact));
        ask_kinds(term, Fit::Exact);
    }

    void ask_beginning(SearchTerm& term)
    {
        auto& into = term.products(Fit::Beginning);
        into.add(term.products(Fit::Exact));
        const auto [first, last] = term.word().size() <= 2 ? memory->beginning_lists(term.word())
                                                           : memory->words().beginning_with(term.word());
        lists->ask(first, last, into);
        ask_kinds(term, Fit::Beginning);
    }

    /// A portion of the loose products; behind the last one the tier is complete.
    void look_at_loose()
    {
        const auto& loose = memory->loose();
        const auto last = std::min(loose.size(), next_loose + loose_at_once);
        for (; next_loose < last; ++next_loose)
            if (loose_fits[next_loose] == Fit::None && fit != Fit::Beginning) // that was seen with the exact ones
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
                if (kind != SearchMemory::no_kind && best != Fit::Exact)
                    best = std::min(best, term.kind_fit(memory->kinds()[kind], slips));
            worst = std::max(worst, best);
        }
        return worst;
    }

    void end_tier()
    {
        Tier tier{ProductBits(memory->products()), {}};
        bool first = true;
        for (auto& term : terms) {
            const bool so_far = fit == Fit::Slips || (fit == Fit::Beginning && term.is_last());
            const auto& fitting = term.products(so_far ? fit : Fit::Exact);
            if (std::exchange(first, false))
                tier.listed = fitting;
            else
                tier.listed.keep(fitting);
        }
        tier.listed.drop(memory->out_of_date());
        for (const auto& better : tiers)
            tier.listed.drop(better.listed);
        for (std::size_t i = 0; i < loose_fits.size(); ++i)
            if (loose_fits[i] == fit)
                tier.loose.push_back(&memory->loose()[i]);
        std::sort(tier.loose.begin(), tier.loose.end(), in_order);
        count += tier.listed.count() + tier.loose.size();
        tiers.push_back(std::move(tier));
        next_fit();
    }

    void next_fit()
    {
        next_loose = 0;
        if (fit == Fit::Exact) {
            fit = Fit::Beginning;
            ask_lists();
        } else if (fit == Fit::Beginning && count < enough_without_slips) {
            fit = Fit::Slips;
            near_term = 0;
            begin_near();
        } else {
            work = Work::Nothing;
        }
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
        const auto& words = memory->words();
        for (std::size_t looked = 0; term.forgives() && next_word < words.size(); ++looked) {
            if (looked == words_at_once)
                return;
            const auto slips = near->look(words[next_word]);
            if (slips && near_found[*slips].size() < most_near_words)
                near_found[*slips].push_back(next_word);
            const auto passed = slips ? 0 : near->hopeless_after();
            next_word = passed == 0 ? next_word + 1 : words.behind(next_word, passed);
        }
        ask_near(term);
        ++near_term;
        begin_near();
    }

    void ask_near(SearchTerm& term)
    {
        auto& into = term.products(Fit::Slips);
        into.add(term.products(Fit::Exact));
        into.add(term.products(Fit::Beginning));
        if (!term.forgives())
            return;
        std::size_t asked = 0;
        for (const auto& same_slips : near_found)
            for (const auto word : same_slips)
                if (asked++ < most_near_words)
                    lists->ask(word, word + 1, into);
        ask_kinds(term, Fit::Slips);
    }

    /// Adds one more answer, when one is wanted and known. Whether it did.
    bool tell_one()
    {
        while (found.size() < wanted && told_tiers() < tiers.size())
            if (tell_from(tiers[told_tiers()]))
                return true;
        return false;
    }

    /// How many tiers are told to their ends.
    [[nodiscard]] std::size_t told_tiers() const
    {
        std::size_t told = 0;
        while (told < tiers.size() && tiers[told].next_listed >= memory->products() &&
               tiers[told].next_loose >= tiers[told].loose.size())
            ++told;
        return told;
    }

    bool tell_from(Tier& tier)
    {
        tier.next_listed = tier.listed.next_from(tier.next_listed);
        std::optional<FoundProduct> listed;
        if (tier.next_listed < memory->products()) {
            listed = rows.product(rows.key_at_place(tier.next_listed));
            if (!listed) { // taken out of the catalog
                ++tier.next_listed;
                return false;
            }
        }
        if (tier.next_loose < tier.loose.size()) {
            const auto& loose = *tier.loose[tier.next_loose];
            if (!listed || std::pair(loose.name, loose.key) < std::pair(fold(listed->name), key_of(listed->gtin))) {
                ++tier.next_loose;
                if (auto known = rows.product(loose.key))
                    found.push_back(*std::move(known));
                return true;
            }
        }
        if (!listed)
            return false;
        ++tier.next_listed;
        found.push_back(*std::move(listed));
        return true;
    }

    SQLite::Database* database;
    int version;
    std::string path;
    int changes_seen = 0;
    bool loaded = false;
    std::optional<SearchMemory> memory;
    std::optional<SearchLists> lists;
    SearchRows rows;

    std::string question; // folded
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
    std::vector<Tier> tiers;
    std::size_t count = 0;
    std::vector<FoundProduct> found;
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
    return inside_->found;
}

std::size_t NameSearch::count() const
{
    return inside_->count;
}

bool NameSearch::counted() const
{
    return inside_->work == Inside::Work::Nothing;
}

} // namespace catalog
