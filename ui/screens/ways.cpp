#include "ui/look/sizes.h"
#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/words/numbers.h"

#include <string>
#include <utility>

namespace ui {
namespace {

std::vector<Offer> text_sizes(const Ui& ui, const State& state)
{
    std::vector<Offer> offers;
    for (const int percent : text_percents)
        offers.push_back({percent_words(percent, false, ui.language), TextId::button_text_size,
                          percent == state.text_percent, ChooseTextSize{percent}});
    return offers;
}

std::vector<Offer> themes(const Ui& ui, const State& state)
{
    constexpr std::pair<ThemeName, TextId> all[] = {{ThemeName::Paper, TextId::theme_paper},
                                                    {ThemeName::Night, TextId::theme_night},
                                                    {ThemeName::Plain, TextId::theme_plain}};
    std::vector<Offer> offers;
    for (const auto& [theme, id] : all)
        offers.push_back({ui.language.text(id), id, theme == state.theme, ChooseTheme{theme}});
    return offers;
}

void add_voice(const Ui& ui, const State& state, float width, std::vector<Block>& blocks, Actions& asked)
{
    const float gap = ui.look.sizes.gap;
    const auto& language = ui.language;
    add_words(ui, language.text(TextId::ways_voice), Style::Strong, Role::Heading, width, gap, blocks);
    if (!state.voice.there) {
        add_words(ui, language.text(TextId::ways_no_voice), Style::Note, Role::Text, width, 0, blocks);
        return;
    }
    add_words(ui, language.text(TextId::ways_voice_lead), Style::Note, Role::Text, width, 0, blocks);
    add_offers(ui,
               {{language.text(TextId::voice_only), TextId::voice_only, state.voice.mode == VoiceMode::Only,
                 ToggleVoiceOnly{}}},
               width, blocks, asked);
}

/// How long one may do nothing, before one is asked (WCAG 2.2, 2.2.6).
std::string idle_words(int seconds, const Language& language)
{
    const bool minutes = seconds >= 120 && seconds % 60 == 0;
    return language.fill(minutes ? TextId::ways_idle_minutes : TextId::ways_idle_seconds,
                         {{"n", std::to_string(minutes ? seconds / 60 : seconds)}});
}

} // namespace

void ways_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float gap = ui.look.sizes.gap;
    const auto& language = ui.language;
    std::vector<Block> blocks;
    const auto heading = [&](TextId id, float above) {
        add_words(ui, language.text(id), Style::Strong, Role::Heading, width, above, blocks);
    };
    heading(TextId::ways_text, 0);
    add_offers(ui, text_sizes(ui, state), width, blocks, asked);
    heading(TextId::ways_colours, gap);
    add_offers(ui, themes(ui, state), width, blocks, asked);
    add_voice(ui, state, width, blocks, asked);
    heading(TextId::ways_switch, gap);
    add_words(ui, language.text(TextId::ways_switch_lead), Style::Note, Role::Text, width, 0, blocks);
    if (state.idle_seconds > 0) {
        heading(TextId::ways_time, gap);
        add_words(ui, idle_words(state.idle_seconds, language), Style::Note, Role::Text, width, 0, blocks);
    }
    if (state.may_measure) {
        heading(TextId::measure_title, gap);
        add_offers(ui, {{language.text(TextId::ways_measure), TextId::ways_measure, false, OpenMeasure{}}}, width,
                   blocks, asked);
    }
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
