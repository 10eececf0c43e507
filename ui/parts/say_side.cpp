#include "ui/parts/say_side.h"

namespace ui {

void say_side(const Ui& ui, Side side, std::size_t first_note)
{
    const auto& place = ui.language.text(side == Side::Left ? TextId::left : TextId::right);
    for (std::size_t i = first_note; i < ui.notes.size(); ++i)
        ui.notes[i].said = ui.language.fill(TextId::voice_side, {{"side", place}, {"words", ui.notes[i].words}});
}

} // namespace ui
