#include "kiosk/camera/camera_source.h"

#include "kiosk/camera/reader.h"

#include <utility>

namespace kiosk {

CameraSource::CameraSource(CaptureOptions options, Every<Scan>& scans, std::function<void()> wake)
    : scans_(scans), wake_(wake ? std::move(wake) : [] {}),
      capture_(
          std::move(options), [this](const Frame& frame) { look_at(frame); }, [this](CameraState) { wake_(); })
{
}

CameraStatus CameraSource::status() const
{
    return {capture_.state(), frames_, readings_};
}

void CameraSource::look_at(const Frame& frame)
{
    ++frames_;
    const auto reading = read(frame.view());
    if (reading)
        ++readings_;
    auto scan = steady_.see(reading, frame.when);
    if (scan && scans_.put(std::move(*scan)))
        wake_();
}

} // namespace kiosk
