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

# Files of a target compiled several at a time: of all targets that ask for it where PAIRSTAND_PRECOMPILE is "all", of the
# tests where it is "tests". It halves the time of a sanitized build: what several files take out of the same headers is
# made once. Names in unnamed namespaces must differ within such a target, or one of the files that share one stands apart.
# What people run is compiled file by file, as above.
function(in_batches target)
  if(PAIRSTAND_PRECOMPILE STREQUAL "all" OR (PAIRSTAND_PRECOMPILE STREQUAL "tests" AND target MATCHES "^tests_"))
    set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 8)
  endif()
endfunction()
# apart(FILES...): each compiled by itself, for it has names that other files of its target have as well.
function(apart)
  set_source_files_properties(${ARGV} PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
endfunction()
