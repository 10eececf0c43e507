// Any keys at any speed through the wedge, any bytes through the reader of serial ports, and what comes out through the
// parsers of product numbers.
#include "core/code/digital_link.h"
#include "core/code/element_string.h"
#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/input/aim.h"
#include "kiosk/input/joined.h"
#include "kiosk/input/serial_text.h"
#include "kiosk/input/wedge.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

namespace {

/// An input that breaks a promise is a crash, so that the fuzzer keeps it.
void promise(bool holds)
{
    if (!holds)
        std::abort();
}

void check_number(const std::string& text)
{
    if (const auto gtin = core::Gtin::parse(text)) {
        promise(gtin->digits().size() == 14);
        promise(core::Gtin::parse(gtin->digits()) == *gtin);
    }
    if (const auto twelve = core::expand_upc_e(text))
        promise(core::Gtin::parse(*twelve).has_value());
    if (const auto within = core::gtin_within(text)) {
        promise(core::Gtin::parse(within->digits()) == *within);
        // An element string holds all 14 digits as they are; a link may hold them with percent signs and fewer zeros.
        promise(core::is_web_address(text) || text.find(within->digits()) != std::string::npos);
    }
    std::string joined;
    for (const auto& part : kiosk::take_apart(text))
        joined += part;
    promise(joined.empty() || joined == text);
}

/// Keys come out once and in order; scans hold no more characters than were typed.
class Ledger {
public:
    void note(const std::vector<kiosk::Heard>& heard)
    {
        for (const auto& one : heard) {
            if (const auto* scan = std::get_if<kiosk::Scan>(&one)) {
                check_number(scan->text);
                scanned_ += scan->text.size();
                continue;
            }
            const auto& key = std::get<kiosk::Key>(one);
            if (key.kind == kiosk::Key::Kind::Modifier)
                continue; // passes what is held
            promise(key.tag > last_);
            last_ = key.tag;
            ++handed_on_;
        }
    }
    void settle(std::uint64_t pressed) const { promise(scanned_ + handed_on_ <= pressed); }

private:
    std::uint64_t last_ = 0;
    std::uint64_t scanned_ = 0;
    std::uint64_t handed_on_ = 0;
};

/// The bytes in two pieces; texts hold no more than came, and none is longer than one may be.
void check_serial(const std::string& bytes)
{
    kiosk::SerialText text({"~", "$"});
    const std::size_t half = bytes.size() / 2;
    std::size_t total = 0;
    const auto note = [&total](const std::vector<std::string>& texts) {
        for (const auto& one : texts) {
            promise(!one.empty() && one.size() <= kiosk::SerialText::longest + 1);
            total += one.size();
            check_number(one);
        }
    };
    note(text.take(bytes.substr(0, half), kiosk::TimePoint{}));
    note(text.take(bytes.substr(half), kiosk::TimePoint{} + kiosk::Milliseconds{bytes.size() % 200}));
    note(text.idle(kiosk::TimePoint{} + kiosk::Milliseconds{1000}));
    promise(!text.decides_at() && total <= bytes.size());
}

/// What a key of the fuzzer's is.
kiosk::Key::Kind kind_of(std::uint8_t byte)
{
    return byte == '\n'  ? kiosk::Key::Kind::End
           : byte == 1   ? kiosk::Key::Kind::Modifier
           : byte < 0x1D ? kiosk::Key::Kind::Other
                         : kiosk::Key::Kind::Character;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string all{reinterpret_cast<const char*>(data), size};
    check_number(all);
    check_serial(all);
    if (const auto identified = kiosk::identify(all))
        check_number(identified->text);
    kiosk::Wedge wedge({"~\x02", "\x03$"});
    Ledger ledger;
    kiosk::TimePoint now{};
    std::uint64_t tag = 0;
    for (std::size_t i = 0; i + 1 < size; i += 2) {
        kiosk::Key key;
        const std::uint8_t time = data[i + 1];
        now += kiosk::Milliseconds{(time & 0x0F) * (time & 0x10 ? 16 : 1)};
        key.at = now;
        key.blind = kiosk::Milliseconds{(time >> 5) * 64};
        key.tag = ++tag;
        key.character = static_cast<char>(data[i]);
        key.kind = kind_of(data[i]);
        key.repeat = (time & 0x11) == 0x11;
        key.sign = data[i] == '9' && time % 2 == 0 ? '(' : '\0';
        ledger.note(wedge.press(key));
        if (time & 0x10)
            ledger.note(wedge.idle(now + kiosk::Milliseconds{time}));
    }
    ledger.note(wedge.idle(now + kiosk::Milliseconds{1000}));
    promise(!wedge.decides_at());
    ledger.settle(tag);
    return 0;
}
