# Headers that nearly every file includes, compiled once a target where PAIRSTAND_PRECOMPILE asks for it. Half of the time
# of a compiler goes into them. The other kinds do without, so that a file that forgets an include does not get through.
function(with_compiled_headers target)
  if(PAIRSTAND_PRECOMPILE)
    target_precompile_headers(${target} PRIVATE
      <algorithm> <array> <cstdint> <filesystem> <functional> <map> <memory> <optional> <span> <string> <string_view>
      <variant> <vector> <tl/expected.hpp> ${ARGN})
  endif()
endfunction()
