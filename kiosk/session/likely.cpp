// Where the camera is not sure: the question which product it is, and what puts it away.
#include "kiosk/session/likely_products.h"
#include "kiosk/session/session.h"
#include "ui/words/found_words.h"

#include <stdexcept>
#include <utility>

namespace kiosk {

using ui::Notice;
using ui::ScreenId;
using ui::TextId;

namespace {

/// More than a person compares with a package in the hand; then the bars tell too little.
constexpr std::size_t most_asked = 4;

/// Where the next package is awaited. Elsewhere somebody is doing something.
bool awaits_package(ScreenId screen)
{
    return screen == ScreenId::Welcome || screen == ScreenId::OneLabel || screen == ScreenId::Pair ||
           screen == ScreenId::NotFound;
}

/// The question, and what is opened from it to see, hear and understand it.
bool is_about_likely(ScreenId screen)
{
    return screen == ScreenId::LikelyProduct || screen == ScreenId::Ways || screen == ScreenId::Measure;
}

} // namespace

void Session::goes_by(Now now)
{
    now_ = std::move(now);
}

bool Session::consider(const Likely& likely)
{
    const auto numbers = numbers_of(likely);
    const bool settled = settled_.sees(numbers, likely.when);
    const bool busy = !awaits_package(state_.screen) || state_.voice.mode == ui::VoiceMode::Reading;
    if (settled || busy || likely.when < scanned_at_)
        return false;
    std::vector<core::Product> products;
    try {
        products = products_of(likely, [this](const core::Gtin& gtin) { return store_->find(gtin); });
    } catch (const std::runtime_error&) { // the next scan says that the catalog broke; a doubt is no reason to
        return false;
    }
    if (products.empty() || products.size() > most_asked)
        return false;
    likely_ = std::move(products);
    likely_numbers_ = numbers;
    go(ScreenId::LikelyProduct);
    say(Notice::Tone::Found, likely_.size() == 1 ? TextId::notice_likely_one : TextId::notice_likely);
    refresh();
    return true;
}

/// Takes the question away: it is answered, or nobody answers it. Whoever stands before it is back where it came.
void Session::put_away_likely()
{
    for (const auto& number : likely_numbers_)
        settled_.settle(number, now_());
    likely_.clear();
    likely_numbers_.clear();
    if (state_.screen != ScreenId::LikelyProduct)
        return;
    const Visit to = trail_.empty() ? Visit{ScreenId::Welcome, 0} : trail_.back();
    if (!trail_.empty())
        trail_.pop_back();
    state_.screen = to.screen;
    state_.page = to.page;
}

/// What a scan says is no longer asked about, nor what was seen before it.
void Session::settle(const Scan& scan)
{
    put_away_likely();
    scanned_at_ = now_();
    for (const auto& candidate : candidates(scan))
        settled_.settle(candidate.gtin, scanned_at_);
}

void Session::refresh_likely()
{
    if (!likely_.empty() && !is_about_likely(state_.screen))
        put_away_likely();
    state_.likely.clear();
    for (const auto& product : likely_)
        state_.likely.push_back({product.gtin, product.name, ui::found_detail(product, language())});
}

} // namespace kiosk
