#include "kiosk/session/session.h"

namespace kiosk {

void Session::shows(std::optional<catalog::Manifest> bundle)
{
    bundle_ = std::move(bundle);
    refresh_bundle();
}

void Session::refresh_bundle()
{
    state_.bundle.clear();
    if (bundle_)
        state_.bundle = language().fill(ui::TextId::welcome_bundle,
                                        {{"name", bundle_->name}, {"made", bundle_->made}, {"maker", bundle_->maker}});
}

} // namespace kiosk
