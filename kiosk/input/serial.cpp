#include "kiosk/input/serial.h"

#include "kiosk/input/product_text.h"
#include "kiosk/input/serial_text.h"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <map>
#include <optional>
#include <poll.h>
#include <set>
#include <stdexcept>
#include <sys/eventfd.h>
#include <sys/inotify.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace kiosk {
namespace {

/// A port that is no scanner is left alone after so many bytes for each text that it had to send one.
constexpr std::size_t bytes_a_text = 1024;

/// How often a folder is looked through that the system will not watch for us.
constexpr Milliseconds look_every{2000};

/// Tells when something in a folder came, went or changed who may read it; no descriptor where the system refuses.
class FolderWatch {
public:
    explicit FolderWatch(const std::string& folder) : descriptor_(inotify_init1(IN_NONBLOCK | IN_CLOEXEC))
    {
        constexpr auto events = IN_CREATE | IN_DELETE | IN_MOVED_TO | IN_MOVED_FROM | IN_ATTRIB;
        if (descriptor_ >= 0 && inotify_add_watch(descriptor_, folder.c_str(), events) < 0)
            close(std::exchange(descriptor_, -1));
    }
    ~FolderWatch()
    {
        if (descriptor_ >= 0)
            close(descriptor_);
    }
    FolderWatch(const FolderWatch&) = delete;
    FolderWatch& operator=(const FolderWatch&) = delete;

    [[nodiscard]] int descriptor() const { return descriptor_; }
    void drain() const
    {
        char events[4096];
        while (read(descriptor_, events, sizeof events) > 0) {
        }
    }

private:
    int descriptor_;
};

struct OpenedPort {
    SerialPort port;
    SerialText text;
    bool scanner = false;  ///< it has shown that it is one
    std::size_t texts = 0; ///< sent before it did
    std::size_t bytes = 0;
};

struct FailedPort {
    PortTrouble what = PortTrouble::Absent;
    TimePoint since; ///< when it became so
    TimePoint again; ///< when to try it again
    Milliseconds pause{0};
    bool told = false;
};

} // namespace

/// What the thread holds.
class SerialSource::Listener {
public:
    explicit Listener(SerialSource& source) : source_(source), options_(source.options_), watch_(options_.devices) {}

    /// One round: opens what there is, waits, reads. False when the thread is to end.
    bool round()
    {
        if (look_due())
            look();
        std::vector<pollfd> waiting{{source_.stop_, POLLIN, 0}, {watch_.descriptor(), POLLIN, 0}};
        for (const auto& [path, port] : open_)
            waiting.push_back({port.port.descriptor(), POLLIN, 0});
        if (poll(waiting.data(), waiting.size(), patience()) < 0 && errno != EINTR)
            return false;
        if (waiting[0].revents != 0)
            return false;
        if (waiting[1].revents != 0)
            changed();
        auto next = open_.begin();
        for (std::size_t i = 2; i < waiting.size(); ++i) {
            const auto port = next++;
            if (waiting[i].revents != 0 ? !hear(*port) : !pause_in(*port))
                open_.erase(port);
        }
        source_.open_ports_ = open_.size();
        return true;
    }

private:
    using Entry = std::pair<const std::string, OpenedPort>;

    [[nodiscard]] bool finds_by_itself() const { return options_.port == "auto"; }

    /// The ports that may be a scanner's.
    [[nodiscard]] std::set<std::string> ports_here() const
    {
        if (!finds_by_itself())
            return {options_.port};
        std::set<std::string> ports;
        std::error_code ignored;
        for (const auto& entry : std::filesystem::directory_iterator(options_.devices, ignored))
            if (entry.path().filename().string().starts_with("ttyACM"))
                ports.insert(entry.path().string());
        return ports;
    }

    void changed()
    {
        watch_.drain();
        look_at_ = {};
        for (auto& [path, failed] : failed_) { // somebody may have given us the right to read it, or plugged it in
            failed.again = {};
            failed.pause = options_.first_pause;
        }
    }

    [[nodiscard]] bool look_due() const
    {
        const auto now = Clock::now();
        const auto due = [now](const auto& failed) { return failed.second.again <= now; };
        return look_at_ <= now || std::ranges::any_of(failed_, due);
    }

    void look()
    {
        look_at_ = watch_.descriptor() < 0 ? Clock::now() + look_every : TimePoint::max();
        const auto here = ports_here();
        std::erase_if(failed_, [&](const auto& failed) { return !here.contains(failed.first); });
        std::erase_if(left_alone_, [&](const auto& path) { return !here.contains(path); });
        for (const auto& path : here) {
            const auto failed = failed_.find(path);
            const bool waits = failed != failed_.end() && Clock::now() < failed->second.again;
            if (!open_.contains(path) && !left_alone_.contains(path) && !waits)
                open(path);
        }
        source_.open_ports_ = open_.size();
    }

    void open(const std::string& path)
    {
        auto opened = SerialPort::open(path, options_.open);
        if (auto* port = std::get_if<SerialPort>(&opened)) {
            if (const auto failed = failed_.extract(path); !failed.empty() && failed.mapped().told)
                tell({failed.mapped().what, path, true});
            open_.emplace(path, OpenedPort{std::move(*port), SerialText(options_.around), !finds_by_itself()});
            return;
        }
        remember(path, std::get<PortTrouble>(opened));
    }

    /// Tries the port again later, and tells once what is wrong with it.
    void remember(const std::string& path, PortTrouble trouble)
    {
        const auto now = Clock::now();
        auto& failed = failed_[path];
        if (trouble == PortTrouble::Absent && failed.what == PortTrouble::Pulled)
            trouble = PortTrouble::Pulled;
        if (failed.pause == Milliseconds{0} || failed.what != trouble)
            failed = {trouble, now, {}, options_.first_pause};
        else
            failed.pause = std::min(failed.pause * 2, options_.longest_pause);
        failed.again = now + failed.pause;
        const auto wait = patience_with(trouble);
        if (failed.told || !wait || now - failed.since < *wait)
            return;
        failed.told = true;
        tell({trouble, path});
    }

    void tell(SerialTrouble trouble)
    {
        if (source_.troubles_.put(std::move(trouble)))
            source_.wake_();
    }

    /// For how long a trouble may pass by itself before it is told; nothing: it never is.
    [[nodiscard]] std::optional<Milliseconds> patience_with(PortTrouble trouble) const
    {
        if (trouble == PortTrouble::Absent || trouble == PortTrouble::Pulled)
            return finds_by_itself() ? std::nullopt : std::optional(options_.absent_patience);
        return trouble == PortTrouble::Busy ? options_.busy_patience : Milliseconds{0};
    }

    /// Milliseconds until something happens by itself, as poll(2) wants it.
    [[nodiscard]] int patience() const
    {
        TimePoint until = look_at_;
        for (const auto& [path, failed] : failed_)
            until = std::min(until, failed.again);
        for (const auto& [path, port] : open_)
            until = std::min(until, port.text.decides_at().value_or(until));
        if (until == TimePoint::max())
            return -1;
        const auto left = std::chrono::ceil<Milliseconds>(until - Clock::now());
        return static_cast<int>(std::max(left, Milliseconds{0}).count());
    }

    /// Takes what a port has sent. False when the port is gone or is to be left alone. What a code was torn off from by
    /// a pulled cable is forgotten: it may look like another code.
    bool hear(Entry& entry)
    {
        auto& [path, port] = entry;
        const auto bytes = port.port.read();
        if (!bytes) {
            remember(path, PortTrouble::Pulled);
            return false;
        }
        port.bytes += bytes->size();
        return hand_over(entry, port.text.take(*bytes, Clock::now()));
    }

    bool pause_in(Entry& entry) { return hand_over(entry, entry.second.text.idle(Clock::now())); }

    bool hand_over(Entry& entry, const std::vector<std::string>& texts)
    {
        auto& [path, port] = entry;
        for (const auto& text : texts) {
            auto scan = scan_of(text, Clock::now());
            port.scanner = port.scanner || holds_number(scan);
            if (!port.scanner)
                ++port.texts;
            else if (source_.scans_.put(std::move(scan)))
                source_.wake_();
        }
        if (port.scanner || (port.texts < options_.patience && port.bytes < options_.patience * bytes_a_text))
            return true;
        left_alone_.insert(path);
        return false;
    }

    SerialSource& source_;
    const SerialOptions& options_;
    FolderWatch watch_;   ///< begun before the first look, so that nothing is missed between
    TimePoint look_at_{}; ///< when to look for ports again, whatever the watch says
    std::map<std::string, OpenedPort> open_;
    std::map<std::string, FailedPort> failed_;
    std::set<std::string> left_alone_; ///< no scanners, until they are pulled out
};

SerialSource::SerialSource(SerialOptions options, Every<Scan>& scans, std::function<void()> wake)
    : options_(std::move(options)), scans_(scans), wake_(wake ? std::move(wake) : [] {}),
      stop_(eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK))
{
    if (stop_ < 0)
        throw std::runtime_error("the system gives no more file descriptors");
}

SerialSource::~SerialSource()
{
    stop();
    close(stop_);
}

void SerialSource::start()
{
    if (!thread_.joinable())
        thread_ = std::thread([this] { run(); });
}

void SerialSource::stop()
{
    if (!thread_.joinable())
        return;
    eventfd_write(stop_, 1);
    thread_.join();
    eventfd_t taken = 0;
    eventfd_read(stop_, &taken);
}

void SerialSource::run()
{
    Listener listener(*this);
    while (listener.round()) {
    }
    open_ports_ = 0;
}

} // namespace kiosk
