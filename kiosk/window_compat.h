// Dear ImGui's SDL2 backend: imgui_impl_sdl.h in 1.86 (Debian 12), imgui_impl_sdl2.h in 1.90 (Debian 13).
#pragma once

#if __has_include(<backends/imgui_impl_sdl2.h>)
#include <backends/imgui_impl_sdl2.h>
#else
#include <backends/imgui_impl_sdl.h>
#endif
