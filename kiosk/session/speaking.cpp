// Which language the session speaks: that of the station or one that was touched; drafts at the leader desk only.
#include "kiosk/desk/desk_words.h"
#include "kiosk/session/session.h"

namespace kiosk {

using ui::ScreenId;

/// Whether a language may be shown on the screen that is open.
bool Session::may_speak(std::size_t language) const
{
    return !languages_[language].is_draft() || is_desk(state_.screen);
}

std::size_t Session::default_language() const
{
    for (std::size_t i = 0; i < languages_.size(); ++i)
        if (languages_[i].code() == defaults_.language && !languages_[i].is_draft())
            return i;
    return 0;
}

const ui::Language& Session::language() const
{
    return languages_[may_speak(language_) ? language_ : default_language()];
}

/// The one that the button of the bar changes to: the next that may be shown.
std::size_t Session::next_language() const
{
    auto next = may_speak(language_) ? language_ : default_language();
    do
        next = (next + 1) % languages_.size();
    while (!may_speak(next));
    return next;
}

/// Whoever leaves the desk leaves the draft there; the question whether somebody is there leads back to the desk.
void Session::leave_draft()
{
    if (!may_speak(language_) && state_.screen != ScreenId::StillThere)
        language_ = default_language();
}

} // namespace kiosk
