// What came of loading a release: counted by kind, with samples.
#pragma once

#include "catalog/load/audit_tally.h"
#include "catalog/load/merge.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace catalog {

/// What can be found in a record of a release.
enum class Finding : std::uint8_t {
    // not taken
    OlderRecord,    ///< a newer record of the same product was taken
    NotChosen,      ///< outside the subset that the leader asked for
    Case,           ///< a carton of several
    NotAProduct,    ///< a number that names nothing outside one store
    WrongDigits,    ///< a check digit that does not fit
    UnreadableCode, ///< what stands there is no code
    NoCode,         ///< nothing stands there
    NoServingSize,
    NoName,
    NoNutrients, ///< neither the newest nor an older record has any
    // taken, with something to know
    OlderTaken,    ///< the newest record has no nutrients: an older one was taken
    CodeCompleted, ///< zeros or a check digit were added
    NoDerivation,
    WorkedBack,
    UnitGuessed,
    UnitUnknown,
    NutrientTwice,
    TextCut,
    OwnEntryKept, ///< the leader's own entry stands, and says something else
    // rows that belong to nothing
    LostAmounts, ///< amounts of foods that branded_food.csv does not have; those of records left out are none
    BadAmounts,  ///< amounts that are no numbers
    BrokenRow,   ///< a row with too few cells, or without a record number
};
inline constexpr std::size_t finding_count = static_cast<std::size_t>(Finding::BrokenRow) + 1;

/// How often something was found, and where the first times.
struct Found {
    static constexpr std::size_t most_samples = 5;
    static constexpr std::size_t looked_at = 200; ///< so many are looked at for samples that differ
    std::size_t count = 0;
    std::vector<std::string> samples;
};

/// A category or a market that was asked for and that no record has.
struct NotThere {
    enum class What { Category, Market };
    What what;
    std::string asked;
    std::vector<std::string> there; ///< some that records have: the nearest, then those of most records
    std::size_t more = 0;           ///< how many others there are
};

/// What came of a release.
class ReleaseReport {
public:
    /// Counts a finding; `sample` names the record, and is only made where there is room for it. The same
    /// one twice in a row is kept once.
    template<class Sample>
    void note(Finding finding, Sample sample)
    {
        auto& found = found_[static_cast<std::size_t>(finding)];
        ++found.count;
        if (found.samples.size() >= Found::most_samples || found.count > Found::looked_at)
            return;
        if (auto words = sample(); found.samples.empty() || found.samples.back() != words) // many rows of one record
            found.samples.push_back(std::move(words));
    }
    /// What an earlier part of the same load had counted.
    void restore(Finding finding, Found found) { found_[static_cast<std::size_t>(finding)] = std::move(found); }
    [[nodiscard]] const Found& of(Finding finding) const { return found_[static_cast<std::size_t>(finding)]; }

    /// Counts an entry of the leader's own that stands over another one of the release.
    void note_own_kept(EntryDifference difference)
    {
        ++found_[static_cast<std::size_t>(Finding::OwnEntryKept)].count;
        if (own_kept_.size() < EntryDifference::most_samples)
            own_kept_.push_back(std::move(difference));
    }
    /// The first of those: what the own entry says, and the release.
    [[nodiscard]] const std::vector<EntryDifference>& own_kept() const { return own_kept_; }

    std::size_t records = 0;  ///< rows of branded_food.csv, or objects of the JSON
    std::size_t amounts = 0;  ///< rows of food_nutrient.csv
    std::size_t taken = 0;    ///< products now in the catalog because of this load
    std::size_t replaced = 0; ///< of these, how many stand in place of an older entry
    std::size_t kept = 0;     ///< products of the catalog that the release does not have, or may not replace
    std::uint64_t bytes = 0;  ///< of the files read
    std::vector<NotThere> not_there;
    AuditTally audit; ///< what is doubtful in the new catalog, all its labels

private:
    std::array<Found, finding_count> found_;
    std::vector<EntryDifference> own_kept_;
};

} // namespace catalog
