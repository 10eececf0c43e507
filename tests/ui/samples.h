// Products of the demo catalog, and the states of screens that they lead to, for the tests of ui.
#pragma once

#include "core/product.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace test {

/// config/demo/cedar_hollow.csv, read once. Throws where it has a fault.
[[nodiscard]] const std::vector<core::Product>& demo_products();

/// The product with that number as it stands on its package; throws std::out_of_range where there is none.
[[nodiscard]] const core::Product& demo_product(std::string_view code);

/// A state with nothing on it but what every state has.
[[nodiscard]] ui::State state_of(ui::ScreenId screen, const ui::Language& language);

/// A camera's small picture: bars on a grey that gets lighter to the right.
[[nodiscard]] ui::CameraView camera_view(const std::string& hint, int width = 16, int height = 9);

/// A demo product with a very long ingredient list that names all that can be named, entered before sesame had to be.
[[nodiscard]] core::Product product_with_long_list();

/// One label on the left.
[[nodiscard]] ui::State label_state(const core::Product& product, const ui::Language& language);

/// Two labels side by side.
[[nodiscard]] ui::State pair_state(const core::Product& left, const core::Product& right, core::Basis basis,
                                   const ui::Language& language);

/// The screen on which their shelf prices are typed, with these typed.
[[nodiscard]] ui::State prices_state(const core::Product& left, std::optional<core::Money> left_price,
                                     const core::Product& right, std::optional<core::Money> right_price,
                                     const ui::Language& language);

/// The screen on which another amount is chosen for a pair.
[[nodiscard]] ui::State amounts_state(const core::Product& left, const core::Product& right,
                                      const core::MyAmount& amount, const ui::Language& language);

/// Where one row of a pair comes from.
[[nodiscard]] ui::State why_state(const core::Product& left, const core::Product& right, core::Basis basis,
                                  core::Nutrient nutrient, const ui::Language& language);

/// Where one line of a label comes from.
[[nodiscard]] ui::State why_state(const core::Product& product, core::Nutrient nutrient, const ui::Language& language);

/// The aisles of the demo catalog.
[[nodiscard]] ui::State aisles_state(const ui::Language& language);

/// The products of one aisle; of all of them where it is empty.
[[nodiscard]] ui::State products_state(std::string_view aisle, const ui::Language& language);

/// The screen on which a name is typed, with the products of one aisle (all of them where it is empty) as its answers.
[[nodiscard]] ui::State found_state(const std::string& typed, std::string_view aisle, const ui::Language& language);

/// The question which of these demo products the camera sees.
[[nodiscard]] ui::State likely_state(const std::vector<std::string>& codes, const ui::Language& language);

/// A state and what it shows, for CAPTURE.
struct NamedState {
    std::string name;
    ui::State state;
};

/// The screens of seeing, hearing and reaching, and others while the voice speaks.
[[nodiscard]] std::vector<NamedState> access_states(const ui::Language& language);

/// The view for a group, of pairs with long names and many remarks.
[[nodiscard]] std::vector<NamedState> group_states(const ui::Language& language);

/// That question about one product, about names of any length, and in front of others.
[[nodiscard]] std::vector<NamedState> likely_states(const ui::Language& language);

/// The screen that says what the words of this state's screen mean.
[[nodiscard]] ui::State words_state(ui::State from, const ui::Language& language);

/// That screen as it is opened from each screen that leads to it.
[[nodiscard]] std::vector<NamedState> words_states(const ui::Language& language);

/// Every screen of a shopper's way, with labels that are hard to set: long names, many remarks, nothing printed.
[[nodiscard]] std::vector<NamedState> hard_states(const ui::Language& language);

} // namespace test
