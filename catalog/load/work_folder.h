// Where a load sets things aside, and how far it had come when it was broken off: a load of the same files goes on
// there.
#pragma once

#include "catalog/load/release_heads.h"
#include "catalog/load/release_options.h"
#include "catalog/load/release_report.h"
#include "catalog/read/release_files.h"

#include <filesystem>
#include <string>
#include <vector>

namespace catalog {

/// What tells one load from another: the files with their sizes and times, what was chosen of them, and since when the
/// machine runs.
[[nodiscard]] std::string fingerprint_of(const ReleaseFiles& files, const std::filesystem::path& source,
                                         const ReleaseChoice& choice);

/// The folder beside a catalog. Throws std::system_error when the disk refuses.
class WorkFolder {
public:
    enum class Done { Nothing, Heads, Amounts };

    /// Opens the folder "CATALOG.loading". What another load left there is thrown away.
    WorkFolder(const std::filesystem::path& catalog, const std::string& fingerprint);

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// How far an earlier load of the same files had come.
    [[nodiscard]] Done done() const { return done_; }

    /// Notes that the records are chosen and their texts set aside; that the amounts are set aside.
    void note_heads(const std::vector<RecordHead>& heads, const RecordSet& left_out, const ReleaseReport& report);
    void note_amounts(const ReleaseReport& report);

    /// What was noted. Throws std::runtime_error when it is not there or not whole.
    [[nodiscard]] std::vector<RecordHead> heads() const;
    [[nodiscard]] RecordSet left_out() const;
    [[nodiscard]] ReleaseReport report() const;

    /// Throws everything away: the load is at its end, or was cancelled.
    void clear() const noexcept;

private:
    void write_state(Done done, const ReleaseReport& report);
    std::filesystem::path path_;
    std::string fingerprint_;
    Done done_ = Done::Nothing;
};

} // namespace catalog
