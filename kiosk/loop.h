// The station's heartbeat: waits until something happens, lets the session answer it, and draws only then.
#pragma once

#include "kiosk/camera/camera_source.h"
#include "kiosk/camera_news.h"
#include "kiosk/clock.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/guide.h"
#include "kiosk/input/keyboard.h"
#include "kiosk/input/serial.h"
#include "kiosk/mailbox.h"
#include "kiosk/session/idle.h"
#include "kiosk/session/session.h"
#include "kiosk/sound/sound.h"
#include "kiosk/trace.h"
#include "kiosk/window.h"

#include <functional>
#include <string>
#include <vector>

namespace kiosk {

/// What the loop keeps going; all of it outlives the loop. What may be absent is null.
struct LoopParts {
    Window& window;
    Session& session;
    StationCatalog& catalog;
    Every<Scan>& scans; ///< from other threads
    CameraSource* camera = nullptr;
    bool camera_expected = false; ///< asked for by name: say so when it is not there
    Sound* sound = nullptr;
    Trace* trace = nullptr;
    std::chrono::seconds patience{0}; ///< without a touch, before the station asks whether somebody is there
    Milliseconds switch_pace{1500};   ///< how long each line stays lit for one switch
    std::function<void(const std::string&)> complain; ///< for whoever looks after the station; may be empty
    SerialSource* serial = nullptr;
    ScannerKeys scanner; ///< what a scanner that types puts before and behind each code
};

/// One run of the station, from the first picture until somebody closes it.
class Loop {
public:
    explicit Loop(const LoopParts& parts);
    void run();

private:
    void gather();
    void search();
    void wait();
    void look_at(const SDL_Event& event, Milliseconds blind);
    void person_pressed(const SDL_Event& event);
    bool name_pressed(const SDL_Event& event);
    void take(const std::vector<Scan>& scans);
    void apply(const ui::Actions& asked);
    void trace_chosen(const ui::Actions& asked);
    void guarded(const std::function<void()>& work);
    void follow_catalog();
    void follow_camera();
    void follow_serial();
    void follow_desk();
    void follow_sound();
    void follow_idle();
    void forget();
    void somebody_is_there();
    [[nodiscard]] TimePoint next_look() const;
    void sound_notice(bool touched);
    void draw();

    LoopParts parts_;
    Keyboard keyboard_;
    ui::Notes notes_;
    ui::Actions pressed_; ///< what keys asked for
    TimePoint looked_;    ///< when the queue of events was last seen empty
    TimePoint catalog_looked_;
    Guide guide_;
    Idle idle_;
    CameraNews camera_news_;
    unsigned sounded_ = 0; ///< the last notice that was heard
    int frames_due_ = 0;
    bool touched_ = false; ///< a finger came down or was lifted, and no frame has shown it
    bool lifted_ = false;  ///< a finger was lifted, and no frame has shown it
    bool running_ = true;
};

} // namespace kiosk
