// How the camera is, as one word: what capture finds out and the screen says in a sentence.
#pragma once

namespace kiosk {

/// How the camera is.
enum class CameraState {
    Off,         ///< not started, or stopped
    Starting,    ///< asked for, no frame yet
    Running,     ///< frames come
    NoCamera,    ///< none there, or it went away; looked for again with growing pauses
    Stalled,     ///< there, but no frame came for too long; opened again with growing pauses
    Busy,        ///< there, but another program uses it
    Refused,     ///< there, but this user may not open it
    WrongFormat, ///< there, but what it sends is no picture that we can read
};

} // namespace kiosk
