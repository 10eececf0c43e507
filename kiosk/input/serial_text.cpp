#include "kiosk/input/serial_text.h"

#include <utility>

namespace kiosk {
namespace {

constexpr char begin_of_text = '\x02'; // STX and ETX of ASCII: some scanners frame their codes with them
constexpr char end_of_text = '\x03';

bool ends_text(char byte)
{
    return byte == '\r' || byte == '\n' || byte == '\t' || byte == end_of_text;
}

} // namespace

std::vector<std::string> SerialText::take(std::string_view bytes, TimePoint at)
{
    std::vector<std::string> out = idle(at);
    for (const char byte : bytes)
        add(byte, out);
    last_ = at;
    return out;
}

std::vector<std::string> SerialText::idle(TimePoint now)
{
    std::vector<std::string> out;
    if (const auto due = decides_at(); due && now >= *due)
        end(out);
    return out;
}

std::optional<TimePoint> SerialText::decides_at() const
{
    if (text_.empty() && !overlong_)
        return std::nullopt;
    return last_ + pause;
}

void SerialText::add(char byte, std::vector<std::string>& out)
{
    if (ends_text(byte)) {
        end(out);
    } else if (overlong_ || (text_.empty() && byte == begin_of_text)) {
        return;
    } else {
        text_ += byte;
        if (text_.size() > longest) {
            out.push_back(std::exchange(text_, {}));
            overlong_ = true;
        }
    }
}

void SerialText::end(std::vector<std::string>& out)
{
    std::string text = std::exchange(text_, {});
    overlong_ = false;
    if (!around_.prefix.empty() && text.starts_with(around_.prefix))
        text.erase(0, around_.prefix.size());
    if (!around_.suffix.empty() && text.ends_with(around_.suffix))
        text.erase(text.size() - around_.suffix.size());
    if (!text.empty())
        out.push_back(std::move(text));
}

} // namespace kiosk
