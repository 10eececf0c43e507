#include "tests/end_to_end/station.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fcntl.h>
#include <sstream>
#include <stdexcept>
#include <unistd.h>

namespace test {
namespace {

using Environment = std::map<std::string, std::string>;

std::vector<std::string> program_with(std::vector<std::string> arguments)
{
    arguments.insert(arguments.begin(), PAIRSTAND_PROGRAM);
    return arguments;
}

TraceLine parse(const std::string& text)
{
    std::istringstream columns(text);
    TraceLine line;
    std::string number;
    std::string microseconds;
    std::string notice;
    for (std::string* column : {&line.kind, &number, &microseconds, &line.screen, &line.left, &line.right, &notice})
        std::getline(columns, *column, '\t');
    std::getline(columns, line.words);
    line.number = std::stol(number);
    line.microseconds = std::stol(microseconds);
    line.notice = std::stol(notice);
    return line;
}

} // namespace

Display::Display(const std::string& size)
{
    std::array<int, 2> number{};
    if (pipe2(number.data(), O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    // Without -noreset the server forgets its keyboard layout whenever its last client leaves.
    server_ =
        std::make_unique<Running>(std::vector<std::string>{"Xvfb", "-displayfd", std::to_string(number[1]), "-noreset",
                                                           "-nolisten", "tcp", "-screen", "0", size + "x24"},
                                  Environment{}, "", number[1]);
    close(number[1]);
    std::string digits;
    char c = 0;
    while (read(number[0], &c, 1) == 1 && c != '\n')
        digits += c;
    close(number[0]);
    if (digits.empty())
        throw std::runtime_error("Xvfb does not start");
    name_ = ":" + digits;
}

Station::Station(std::vector<std::string> arguments, Environment environment, const std::string& display)
    : display_(display)
{
    const auto trace = folder_.file("trace");
    const auto err = folder_.file("err");
    arguments.insert(arguments.end(), {"--trace", trace});
    const Environment own{{"DISPLAY", display_.name()},   {"WAYLAND_DISPLAY", ""},      {"HOME", folder_.file("")},
                          {"XDG_DATA_HOME", ""},          {"PAIRSTAND_CATALOG", ""},    {"PAIRSTAND_DATA", ""},
                          {"SDL_VIDEODRIVER", ""},        {"SDL_AUDIODRIVER", "dummy"}, {"LIBGL_ALWAYS_SOFTWARE", "1"},
                          {"GST_REGISTRY_UPDATE", "yes"}, {"XDG_CACHE_HOME", ""}};
    environment.insert(own.begin(), own.end());
    program_ = std::make_unique<Running>(program_with(std::move(arguments)), environment, err);
    const bool drawn = becomes_true([&] {
        if (!trace_file_.is_open())
            trace_file_.open(trace);
        return this->trace().size() > 2 || !program_->alive(); // three frames: it has settled and waits
    });
    if (!drawn || !program_->alive())
        throw std::runtime_error("the station does not open: " + said());
}

void Station::xdotool(std::vector<std::string> words)
{
    words.insert(words.begin(), "xdotool");
    const auto ended = run(words, {{"DISPLAY", display_.name()}});
    if (ended.status != 0)
        throw std::runtime_error("xdotool: " + ended.err);
}

void Station::press(std::vector<std::string> keys)
{
    keys.insert(keys.begin(), {"key", "--delay", "0"});
    xdotool(std::move(keys));
}

void Station::press_as_person(std::vector<std::string> keys)
{
    keys.insert(keys.begin(), {"key", "--delay", "200"});
    xdotool(std::move(keys));
}

void Station::touch(ImVec2 at, std::chrono::milliseconds held, std::optional<ImVec2> lifted)
{
    const auto pixels = [](float place) { return std::to_string(std::lround(place)); };
    const std::string seconds = std::to_string(static_cast<double>(held.count()) / 1'000);
    std::vector<std::string> words{"mousemove", pixels(at.x), pixels(at.y), "mousedown", "1", "sleep", seconds};
    if (lifted)
        words.insert(words.end(), {"mousemove", pixels(lifted->x), pixels(lifted->y), "sleep", seconds});
    words.insert(words.end(), {"mouseup", "1"});
    xdotool(std::move(words));
}

void Station::touch_at_once(const std::vector<ImVec2>& places)
{
    std::vector<std::string> words;
    for (const auto& at : places)
        words.insert(words.end(), {"mousemove", std::to_string(std::lround(at.x)), std::to_string(std::lround(at.y)),
                                   "mousedown", "1", "mouseup", "1"});
    xdotool(std::move(words));
}

void Station::scan(const std::string& digits)
{
    std::vector<std::string> keys;
    for (const char digit : digits)
        keys.emplace_back(1, digit);
    keys.emplace_back("Return");
    press(std::move(keys));
}

const std::vector<TraceLine>& Station::trace()
{
    std::array<char, 4096> bytes{};
    trace_file_.clear(); // its end was where the program had written to
    while (true) {
        trace_file_.read(bytes.data(), bytes.size());
        unfinished_.append(bytes.data(), static_cast<std::size_t>(trace_file_.gcount()));
        if (!trace_file_)
            break;
    }
    for (auto end = unfinished_.find('\n'); end != std::string::npos; end = unfinished_.find('\n')) {
        trace_.push_back(parse(unfinished_.substr(0, end)));
        unfinished_.erase(0, end + 1);
    }
    return trace_;
}

std::optional<TraceLine> Station::answer(long nth)
{
    const auto is_it = [nth](const TraceLine& line) { return line.kind == "answer" && line.number == nth; };
    if (!becomes_true([&] { return std::ranges::any_of(trace(), is_it); }, std::chrono::seconds(20)))
        return std::nullopt;
    return *std::ranges::find_if(trace_, is_it);
}

std::optional<TraceLine> Station::frame_of_notice(long notice)
{
    const auto is_it = [notice](const TraceLine& line) { return line.kind == "frame" && line.notice == notice; };
    if (!becomes_true([&] { return std::ranges::any_of(trace(), is_it); }, std::chrono::seconds(20)))
        return std::nullopt;
    return *std::ranges::find_if(trace_, is_it);
}

std::string Station::screenshot(const std::string& name)
{
    const auto file = folder_.file(name + ".png");
    const auto ended = run({"import", "-display", display_.name(), "-window", "root", file});
    if (ended.status != 0)
        throw std::runtime_error("import: " + ended.err);
    return file;
}

std::string Station::said() const
{
    return bytes_of(folder_.file("err"));
}

Ended pairstand(std::vector<std::string> arguments, Environment environment)
{
    const TempFolder home;
    const Environment own{{"DISPLAY", ""},         {"WAYLAND_DISPLAY", ""},   {"HOME", home.file("")},
                          {"XDG_DATA_HOME", ""},   {"PAIRSTAND_CATALOG", ""}, {"PAIRSTAND_DATA", ""},
                          {"SDL_VIDEODRIVER", ""}, {"XDG_RUNTIME_DIR", ""}};
    environment.insert(own.begin(), own.end());
    return run(program_with(std::move(arguments)), environment);
}

} // namespace test
