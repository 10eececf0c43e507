// States of the question which product the camera sees.
#include "tests/ui/samples.h"
#include "ui/words/found_words.h"

#include <utility>

namespace test {

ui::State likely_state(const std::vector<std::string>& codes, const ui::Language& language)
{
    auto state = state_of(ui::ScreenId::LikelyProduct, language);
    for (const auto& code : codes) {
        const auto& product = demo_product(code);
        state.likely.push_back({product.gtin, product.name, ui::found_detail(product, language)});
    }
    state.notice.words = language.text(ui::TextId::notice_likely);
    return state;
}

std::vector<NamedState> likely_states(const ui::Language& language)
{
    auto of_any_length = likely_state({"9520141001120", "9520208001131", "9520777012026", "9520427005033"}, language);
    for (std::size_t i = 0; i < of_any_length.likely.size(); ++i) { // as a release may have them
        auto& likely = of_any_length.likely[i];
        likely.name += std::string(20 * i, 'W') + " WITH MANY MORE WORDS THAN ANYBODY READS ON A PACKAGE";
        likely.detail = language.text(ui::TextId::find_this_place) + "\n" + likely.detail + std::string(10 * i, 'M');
    }
    auto over_label = label_state(demo_product("9520777012026"), language);
    over_label.screen = ui::ScreenId::LikelyProduct;
    over_label.likely = of_any_length.likely;
    auto spoken = likely_state({"9520141001120", "9520208001131"}, language);
    spoken.voice = {true, ui::VoiceMode::Only};
    return {{"likely one", likely_state({"9520141001120"}, language)},
            {"likely names of any length", of_any_length},
            {"likely over a label", over_label},
            {"likely, spoken", spoken}};
}

} // namespace test
