# Headers that nearly every file includes, compiled once a target: of all targets where PAIRSTAND_PRECOMPILE is "all", of the
# tests where it is "tests". Half of the time of a compiler goes into them. What people run is always compiled without, so
# that a file that forgets an include does not get through.
function(with_compiled_headers target)
  if(PAIRSTAND_PRECOMPILE STREQUAL "all" OR (PAIRSTAND_PRECOMPILE STREQUAL "tests" AND target MATCHES "^tests_"))
    target_precompile_headers(${target} PRIVATE
      <algorithm> <array> <cstdint> <filesystem> <functional> <map> <memory> <optional> <span> <string> <string_view>
      <variant> <vector> <tl/expected.hpp> ${ARGN})
  endif()
endfunction()
