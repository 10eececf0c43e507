#include "kiosk/window.h"

#include "kiosk/window_compat.h"
#include "ui/screens/screens.h"

#include <SDL.h>
#include <SDL_opengl.h>
#include <imgui.h>

#include <algorithm>
#include <backends/imgui_impl_opengl3.h>
#include <cstdlib>
#include <string_view>
#include <thread>
#include <unistd.h>
#include <utility>

namespace kiosk {
namespace {

[[noreturn]] void fail(const std::string& what)
{
    throw std::runtime_error(what + ": " + SDL_GetError());
}

/// The kind of event that only ends a wait.
Uint32 wake_event()
{
    static const Uint32 type = SDL_RegisterEvents(1);
    return type;
}

/// SDL, started for the screen alone: each further subsystem wakes the station ten times a second.
class Video {
public:
    Video()
    {
        // Under cage the frame that libdecor draws makes SDL crawl or hang, and a station wants none.
        SDL_SetHint("SDL_VIDEO_WAYLAND_ALLOW_LIBDECOR", "0");
        SDL_SetHint(SDL_HINT_APP_NAME, "Pairstand");
        // Without this folder there is no Wayland, and its library would complain beside our own sentence.
        if (!std::getenv("XDG_RUNTIME_DIR") && !std::getenv("WAYLAND_DISPLAY") && !std::getenv("SDL_VIDEODRIVER"))
            SDL_SetHint(SDL_HINT_VIDEODRIVER, "x11,KMSDRM");
        // Where no session has set it, the Wayland library complains on its own beside our one sentence.
        const std::string runtime = "/run/user/" + std::to_string(getuid());
        setenv("XDG_RUNTIME_DIR", runtime.c_str(), 0);
        if (SDL_Init(SDL_INIT_VIDEO) != 0)
            refuse();
        // Without any display SDL picks a driver that shows nothing and reports success.
        const std::string_view driver = SDL_GetCurrentVideoDriver();
        const bool shows_nothing = driver == "offscreen" || driver == "dummy" || driver == "evdev";
        if (shows_nothing && !std::getenv("SDL_VIDEODRIVER")) {
            SDL_Quit();
            refuse();
        }
        blocks_ = driver == "x11" || driver == "wayland";
        wake_event();
        SDL_StopTextInput(); // keys are read by their place; nothing here takes text
    }
    ~Video() { SDL_Quit(); }
    Video(const Video&) = delete;
    Video& operator=(const Video&) = delete;

    /// Whether waiting on this driver sleeps; the others look for events every millisecond.
    [[nodiscard]] bool blocks() const { return blocks_; }

private:
    [[noreturn]] static void refuse()
    {
        throw NoDisplay("there is no display to open the station on; 'pairstand render SCREEN --out PNG' draws a "
                        "screen into a picture without one, and 'pairstand --help' names what else works");
    }
    bool blocks_ = false;
};

/// The window with its OpenGL context.
class Glass {
public:
    explicit Glass(const WindowOptions& options)
    {
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_MAJOR_VERSION, 3);
        SDL_GL_SetAttribute(SDL_GL_CONTEXT_MINOR_VERSION, 0);
        SDL_GL_SetAttribute(SDL_GL_DEPTH_SIZE, 0);
        window_ = SDL_CreateWindow("Pairstand", SDL_WINDOWPOS_CENTERED, SDL_WINDOWPOS_CENTERED, options.width,
                                   options.height, SDL_WINDOW_OPENGL | SDL_WINDOW_RESIZABLE);
        if (!window_)
            fail("no window could be opened");
        context_ = SDL_GL_CreateContext(window_);
        if (!context_) {
            SDL_DestroyWindow(window_);
            fail("the display cannot draw (OpenGL 3.0)");
        }
        SDL_GL_SetSwapInterval(0); // drawn on demand: waiting for the beam would only hold the answer back
        if (options.fullscreen)
            toggle_fullscreen();
    }
    ~Glass()
    {
        SDL_GL_DeleteContext(context_);
        SDL_DestroyWindow(window_);
    }
    Glass(const Glass&) = delete;
    Glass& operator=(const Glass&) = delete;

    void toggle_fullscreen();
    /// How the screen shows pictures that the window is on; 0 by 0 when nobody knows.
    [[nodiscard]] SDL_DisplayMode screen() const
    {
        SDL_DisplayMode mode{};
        SDL_GetDesktopDisplayMode(std::max(0, SDL_GetWindowDisplayIndex(window_)), &mode);
        return mode;
    }

    [[nodiscard]] SDL_Window* window() const { return window_; }
    [[nodiscard]] SDL_GLContext context() const { return context_; }

private:
    void place(SDL_Rect area, bool bordered);

    SDL_Window* window_ = nullptr;
    SDL_GLContext context_ = nullptr;
    std::optional<SDL_Rect> before_; ///< where the window was; set while it fills the screen
};

/// SDL only asks the window manager to fill the screen, and takes the new size for granted; where an X server has no
/// window manager, as on a station, nothing would happen but a picture too large for its window. So the window itself
/// takes the screen's place first.
void Glass::toggle_fullscreen()
{
    if (before_) {
        SDL_SetWindowFullscreen(window_, 0);
        place(*std::exchange(before_, std::nullopt), true);
        return;
    }
    SDL_Rect screen{};
    if (SDL_GetDisplayBounds(std::max(0, SDL_GetWindowDisplayIndex(window_)), &screen) != 0)
        return; // and the window stays as it is
    SDL_Rect now{};
    SDL_GetWindowPosition(window_, &now.x, &now.y);
    SDL_GetWindowSize(window_, &now.w, &now.h);
    before_ = now;
    place(screen, false);
    SDL_SetWindowFullscreen(window_, SDL_WINDOW_FULLSCREEN_DESKTOP);
}

void Glass::place(SDL_Rect area, bool bordered)
{
    SDL_SetWindowBordered(window_, bordered ? SDL_TRUE : SDL_FALSE);
    SDL_SetWindowPosition(window_, area.x, area.y);
    SDL_SetWindowSize(window_, area.w, area.h);
}

/// Dear ImGui with its two backends.
class Drawing {
public:
    explicit Drawing(const Glass& glass)
    {
        ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr; // a station leaves no files about
        io.LogFilename = nullptr;
        io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard | ImGuiConfigFlags_NoMouseCursorChange;
        ImGui_ImplSDL2_InitForOpenGL(glass.window(), glass.context());
        ImGui_ImplOpenGL3_Init("#version 130");
    }
    ~Drawing()
    {
        ImGui_ImplOpenGL3_Shutdown();
        ImGui_ImplSDL2_Shutdown();
        ImGui::DestroyContext();
    }
    Drawing(const Drawing&) = delete;
    Drawing& operator=(const Drawing&) = delete;
};

} // namespace

struct Window::Parts {
    explicit Parts(const WindowOptions& options) : glass(options), drawing(glass), files(options.fonts) {}

    void fit_letters(const ui::State& state);

    Video video;
    Glass glass;
    Drawing drawing;
    Finger finger;
    ui::FontFiles files;
    ui::Sizes sizes{};
    ui::Fonts fonts;
    bool made = false; ///< there are letters
};

/// Makes the letters anew when their sizes changed: ImGui's fonts are fixed pictures, and scaling blurs them.
void Window::Parts::fit_letters(const ui::State& state)
{
    int width = 0;
    int height = 0;
    SDL_GetWindowSize(glass.window(), &width, &height);
    const ui::Sizes wanted = ui::sizes_of(state, static_cast<float>(width), static_cast<float>(height));
    const bool same_letters = made && ui::same_letters(sizes, wanted);
    sizes = wanted;
    if (same_letters)
        return;
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    const bool first = !std::exchange(made, true);
    if (!first)
        ImGui_ImplOpenGL3_DestroyFontsTexture();
    fonts = ui::build_fonts(atlas, files, wanted);
    if (first)
        ImGui_ImplOpenGL3_CreateDeviceObjects(); // the texture is one of them
    else
        ImGui_ImplOpenGL3_CreateFontsTexture();
    atlas.ClearTexData(); // it is on the graphics side now, and takes four bytes a texel here
}

Window::Window(const WindowOptions& options) : parts_(std::make_unique<Parts>(options)) {}

Window::~Window() = default;

std::optional<SDL_Event> Window::poll()
{
    SDL_Event event;
    if (SDL_PollEvent(&event) == 0)
        return std::nullopt;
    return event;
}

std::optional<SDL_Event> Window::wait(std::optional<TimePoint> until)
{
    constexpr Milliseconds look_every{8}; // where SDL cannot sleep: a wait of its own would look every millisecond
    while (true) {
        const auto now = Clock::now();
        if (until && now >= *until)
            return poll();
        // Rounded up: a wait that ends too early would spin until its time has come.
        const auto left = until ? std::chrono::ceil<Milliseconds>(*until - now) : Milliseconds::max();
        if (parts_->video.blocks()) {
            constexpr Milliseconds longest{60'000};
            SDL_Event event;
            if (SDL_WaitEventTimeout(&event, static_cast<int>(std::min(left, longest).count())) != 0)
                return event;
        } else {
            if (auto event = poll())
                return event;
            std::this_thread::sleep_for(std::min(left, look_every));
        }
    }
}

void Window::wake()
{
    SDL_Event event{};
    event.type = wake_event();
    SDL_PushEvent(&event);
}

void Window::hand_on(const SDL_Event& event)
{
    ImGui_ImplSDL2_ProcessEvent(&event);
    parts_->finger.see(event);
    // A finger needs no arrow, and the arrow that stays where a finger was hides words.
    if (event.type == SDL_FINGERDOWN)
        SDL_ShowCursor(SDL_DISABLE);
    else if (event.type == SDL_MOUSEMOTION && event.motion.which != SDL_TOUCH_MOUSEID)
        SDL_ShowCursor(SDL_ENABLE);
}

ui::Actions Window::draw(const ui::State& state, const ui::Language& language, ui::Notes& notes, ui::Access& access)
{
    parts_->fit_letters(state);
    ImGui_ImplOpenGL3_NewFrame();
    ImGui_ImplSDL2_NewFrame();
    parts_->finger.tell_imgui();
    ImGui::NewFrame();
    notes.clear();
    ui::Actions asked;
    const ui::Theme& theme = ui::theme_of(state.theme);
    const ui::Look look{theme, parts_->sizes, parts_->fonts};
    ui::draw({language, look, notes, &access}, state, asked);
    ImGui::Render();

    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const ImVec4 ground = ImGui::ColorConvertU32ToFloat4(theme.ground);
    glViewport(0, 0, static_cast<int>(size.x), static_cast<int>(size.y));
    glClearColor(ground.x, ground.y, ground.z, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    SDL_GL_SwapWindow(parts_->glass.window());
    return asked;
}

int Window::screen_width() const
{
    return parts_->glass.screen().w;
}

int Window::screen_height() const
{
    return parts_->glass.screen().h;
}

int Window::width() const
{
    int width = 0;
    SDL_GetWindowSize(parts_->glass.window(), &width, nullptr);
    return width;
}

void Window::toggle_fullscreen()
{
    parts_->glass.toggle_fullscreen();
}

} // namespace kiosk
