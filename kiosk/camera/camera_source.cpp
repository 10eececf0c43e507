#include "kiosk/camera/camera_source.h"

#include "kiosk/camera/mode.h"
#include "kiosk/camera/small_picture.h"

#include <utility>

namespace kiosk {

CameraSource::CameraSource(CaptureOptions options, Every<Scan>& scans, std::function<void()> wake,
                           AttentionLimits limits, SightChoices sights)
    : scans_(scans), wake_(wake ? std::move(wake) : [] {}), attention_(limits), sights_(sights),
      capture_(
          std::move(options), [this](const Frame& frame) { look_at(frame); }, [this](CameraState) { wake_(); })
{
}

CameraStatus CameraSource::status() const
{
    const auto state = capture_.state();
    const bool running = state == CameraState::Running;
    const bool small = running && !has_enough_pixels(capture_.width(), capture_.height());
    return {state, frames_, reads_, readings_, running && black_, small};
}

std::optional<Frame> CameraSource::picture_within(Milliseconds patience)
{
    [[maybe_unused]] const auto late = picture_.take(); // one that came after somebody had given up
    wants_picture_ = true;
    auto picture = picture_.take_within(patience);
    wants_picture_ = false;
    return picture;
}

void CameraSource::look_at(const Frame& frame)
{
    ++frames_;
    if (wants_picture_.exchange(false))
        picture_.put(frame);
    const Thumb thumb = thumb_of(frame.view());
    follow_light(thumb, frame.when);
    if (attention_.wants(thumb, frame.when))
        read_bars(frame);
    show(frame);
    capture_.take_every(attention_.pace(frame.when));
}

void CameraSource::read_bars(const Frame& frame)
{
    ++reads_;
    if (afresh_.exchange(false))
        steady_ = Steady{};
    const auto reading = added_up_.see(kiosk::look_at(frame.view()), frame.when);
    if (reading) {
        ++readings_;
        read_at_ = frame.when;
    }
    leave_to_a_question(reading.has_value(), frame.when);
    attention_.has_read(reading ? std::optional(reading->text) : std::nullopt, frame.when);
    // At rest the picture is the same as before: what was read in it has not left, even if it is not read this time.
    if (!reading && !attention_.awake(frame.when))
        return;
    auto scan = steady_.see(reading, frame.when);
    if (scan && scans_.put(std::move(*scan)))
        wake_();
}

/// Hands on what the last pictures leave when none of them was sure for a while.
void CameraSource::leave_to_a_question(bool read, TimePoint now)
{
    if (!doubt_.sees(!read && added_up_.unsure(), now))
        return;
    likely_.put({added_up_.likely(), now});
    wake_();
}

/// A hand over the lens is no cap on it: only after some seconds the picture is called black.
void CameraSource::follow_light(const Thumb& thumb, TimePoint now)
{
    constexpr Milliseconds patience{2000};
    if (!is_black(thumb))
        black_since_.reset();
    else if (!black_since_)
        black_since_ = now;
    const bool black = black_since_ && now - *black_since_ >= patience;
    if (black_.exchange(black) == black)
        return;
    attention_.wake(now); // a bare wall moves as little as a cap: the screen must not go on showing the other one
    wake_();
}

/// Makes a small picture for the screen while something moves, and a last one when nothing does any more.
void CameraSource::show(const Frame& frame)
{
    const bool awake = attention_.awake(frame.when);
    const bool fell_asleep = std::exchange(was_awake_, awake) && !awake;
    if (sights_.most_pixels <= 0 || (!fell_asleep && (!awake || frame.when - shown_at_ < sights_.every)))
        return;
    shown_at_ = frame.when;
    CameraSight sight{small_picture(frame.view(), sights_.most_pixels, sights_.mirrored),
                      middle_of(frame.view(), sights_.most_pixels, sights_.mirrored), Hint::Aim};
    if (awake) {
        constexpr Milliseconds just{1500};
        const bool read = read_at_ != TimePoint{} && frame.when - read_at_ < just;
        sight.hint = guidance_.see({attention_.something_there(), attention_.moving(), read, bars_seen(frame.view())},
                                   frame.when);
    } else
        guidance_.rest();
    sight_.put(std::move(sight));
    wake_();
}

} // namespace kiosk
