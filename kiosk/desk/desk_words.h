// The pages of the leader desk in words: a pure function of what the desk holds.
#pragma once

#include "kiosk/desk/desk_state.h"
#include "ui/desk.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <cstdint>
#include <string>

namespace kiosk {

/// The page that this screen shows; an empty one for a screen that is none of the desk.
[[nodiscard]] ui::DeskPage desk_page(const DeskState& state, ui::ScreenId screen, const ui::Language& language);

/// Whether a screen is one of the desk.
[[nodiscard]] bool is_desk(ui::ScreenId screen);

/// The file that is open, before anything is done with it.
[[nodiscard]] ui::DeskPage file_page(const DeskState& state, const ui::Language& language);
/// What the audit found, rule by rule; what one rule found; one doubt.
[[nodiscard]] ui::DeskPage audit_page(const DeskState& state, const ui::Language& language);
[[nodiscard]] ui::DeskPage rule_page(const DeskState& state, const ui::Language& language);
[[nodiscard]] ui::DeskPage doubt_page(const DeskState& state, const ui::Language& language);
/// What came of the last work.
[[nodiscard]] ui::DeskPage report_page(const DeskState& state, const ui::Language& language);

/// "12 KB", "904 MB": thousands or millions of bytes, rounded up; the same in every language.
[[nodiscard]] std::string size_words(std::uint64_t bytes);

/// "Sheet, 12 KB, of 2026-11-26, on CEDAR".
[[nodiscard]] std::string file_line(const StickFile& file, const ui::Language& language);

} // namespace kiosk
