// The screens, one function each, for the list in screens.cpp.
#pragma once

#include "ui/actions.h"
#include "ui/state.h"
#include "ui/ui.h"

namespace ui {

/// What to do first, and room for two packages.
void welcome_screen(const Ui& ui, const State& state, Actions& asked);
/// One label, in the taught order.
void one_label_screen(const Ui& ui, const State& state, Actions& asked);
/// Two labels side by side on one of three bases.
void pair_screen(const Ui& ui, const State& state, Actions& asked);
/// A code that this catalog does not have.
void not_found_screen(const Ui& ui, const State& state, Actions& asked);
/// Two products share eight digits: which one is it?
void which_product_screen(const Ui& ui, const State& state, Actions& asked);
/// Letters to type, and the products whose names fit.
void find_by_name_screen(const Ui& ui, const State& state, Actions& asked);
/// The aisles of the catalog.
void pick_aisle_screen(const Ui& ui, const State& state, Actions& asked);
/// The products of one aisle.
void pick_product_screen(const Ui& ui, const State& state, Actions& asked);
/// The shelf prices of a pair: two fields and the keys to type them.
void prices_screen(const Ui& ui, const State& state, Actions& asked);
/// How much of each: the same cup, as prepared, my amount.
void amounts_screen(const Ui& ui, const State& state, Actions& asked);
/// Where a figure and its finding come from.
void why_screen(const Ui& ui, const State& state, Actions& asked);
/// What the words of the screen before mean, a sentence each.
void words_screen(const Ui& ui, const State& state, Actions& asked);
/// One nutrient a page in letters for people who stand away.
void group_view_screen(const Ui& ui, const State& state, Actions& asked);
/// Ways to see and hear: text size, colours, voice, one switch.
void ways_screen(const Ui& ui, const State& state, Actions& asked);
/// A bank card's outline, to measure the glass with.
void measure_screen(const Ui& ui, const State& state, Actions& asked);
/// Nobody has touched the station for a while: is somebody there?
void still_there_screen(const Ui& ui, const State& state, Actions& asked);
/// The camera is not sure: is it one of these?
void likely_product_screen(const Ui& ui, const State& state, Actions& asked);
/// Every page of the leader desk.
void desk_screen(const Ui& ui, const State& state, Actions& asked);
/// Every widget in every state: living documentation, not part of a shopper's way.
void gallery_screen(const Ui& ui, const State& state, Actions& asked);

} // namespace ui
