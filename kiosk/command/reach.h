// Brings a session to a screen the way people would: by scans and touches.
#pragma once

#include "catalog/store/store.h"
#include "core/compare/basis.h"
#include "kiosk/command/reach_desk.h"
#include "kiosk/session/session.h"
#include "ui/state.h"

#include <optional>
#include <string>

namespace kiosk {

/// Where to go and what to scan on the way.
struct Route {
    ui::ScreenId screen = ui::ScreenId::Welcome;
    std::string left; ///< codes as scanned; empty: the first products of the catalog that fit
    std::string right;
    core::Basis basis = core::Basis::Serving;
    int page = 1;
    std::optional<core::Money> left_price = std::nullopt; ///< typed from the shelf
    std::optional<core::Money> right_price = std::nullopt;
    core::MyAmount amount = {};                  ///< for Basis::MyAmount
    std::optional<core::Nutrient> nutrient = {}; ///< for the screen Why; nothing: the first row
    std::string words = {};                      ///< typed on the screen FindByName
    PictureDesk* desk = nullptr;                 ///< for the pages of the leader desk
};

/// Scans and touches until the session shows that screen. Returns why it cannot, as one sentence; nothing when it does.
[[nodiscard]] std::optional<std::string> reach(Session& session, const catalog::Store& store, const Route& route);

} // namespace kiosk
