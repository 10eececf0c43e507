# Headers that nearly every file includes, compiled once a target: a build from nothing takes a quarter less time. Not
# in every kind, since it hides an include that is missing.
function(precompile_large_targets folder)
  get_property(targets DIRECTORY ${folder} PROPERTY BUILDSYSTEM_TARGETS)
  foreach(target IN LISTS targets)
    get_target_property(type ${target} TYPE)
    get_target_property(sources ${target} SOURCES)
    list(LENGTH sources count)
    if(NOT type MATCHES "LIBRARY|EXECUTABLE" OR type STREQUAL "INTERFACE_LIBRARY" OR count LESS 10)
      continue()
    endif()
    set(headers <algorithm> <array> <filesystem> <functional> <map> <memory> <optional> <set> <span> <string>
                <string_view> <tuple> <utility> <variant> <vector> <tl/expected.hpp>)
    if(target MATCHES "^tests_")
      list(APPEND headers <doctest/doctest.h>)
      set_source_files_properties(${PROJECT_SOURCE_DIR}/tests/support/main.cpp TARGET_DIRECTORY ${target}
                                  PROPERTIES SKIP_PRECOMPILE_HEADERS ON) # it asks for another part of doctest
    endif()
    target_precompile_headers(${target} PRIVATE ${headers})
  endforeach()
  get_property(below DIRECTORY ${folder} PROPERTY SUBDIRECTORIES)
  foreach(one IN LISTS below)
    precompile_large_targets(${one})
  endforeach()
endfunction()
