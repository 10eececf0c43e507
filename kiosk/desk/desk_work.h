// The work of the leader desk, each piece for its own thread: it throws nothing, and a stick that was pulled out is
// told from a file that was never good.
#pragma once

#include "kiosk/camera/frame.h"
#include "kiosk/desk/desk_state.h"
#include "kiosk/desk/worker.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// Looks through these folders, and the mounted sticks where that is asked for.
[[nodiscard]] DeskNews find_files(const std::vector<std::filesystem::path>& folders, bool sticks, WorkLine& line);

/// Looks into a file.
[[nodiscard]] DeskNews preview_file(const StickFile& file, const std::filesystem::path& data);

/// Loads a sheet or a release; the catalog before is kept for undoing it.
[[nodiscard]] DeskNews load_file(const StickFile& file, const std::filesystem::path& into, bool keep_good_rows,
                                 WorkLine& line);

/// Puts the catalog before the last load in place again.
[[nodiscard]] DeskNews take_load_back(const std::filesystem::path& catalog);

/// Installs a bundle; `accept` is the fingerprint that was compared, for the first key.
[[nodiscard]] DeskNews install_file(const StickFile& file, const std::filesystem::path& data, const std::string& accept,
                                    WorkLine& line);

/// Puts what was in place before the bundle there again.
[[nodiscard]] DeskNews take_install_back(const std::filesystem::path& data);

/// Looks through a catalog or a sheet; `file` is the one on a stick, where it is one.
[[nodiscard]] DeskNews audit_file(const std::string& path, bool of_catalog, const std::optional<StickFile>& file,
                                  WorkLine& line);

/// Writes down "I looked, the package says so".
[[nodiscard]] DeskNews approve_doubt(const std::string& catalog, const core::Gtin& gtin, core::DoubtRule rule,
                                     const std::string& day);

/// Takes a picture of the camera and keeps it in the folder.
[[nodiscard]] DeskNews keep_camera_picture(const std::function<std::optional<Frame>()>& take,
                                           const std::filesystem::path& folder);

} // namespace kiosk
