# What every target of ours is compiled with; `target_link_libraries(x PRIVATE house_rules)` asks for it.
add_library(house_rules INTERFACE)
target_compile_options(house_rules INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wswitch-enum -Wconversion -Wnon-virtual-dtor -Woverloaded-virtual
  # Errors with GCC only: clang, which builds the fuzz targets, warns of other things in each release.
  $<$<CXX_COMPILER_ID:GNU>:-Werror>
  # GCC 12 sees overlaps in std::string::insert and operator+ that cannot be (GCC bug 105329, mended in 13).
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>>:-Wno-restrict>)
target_include_directories(house_rules INTERFACE ${PROJECT_SOURCE_DIR})
if(PAIRSTAND_SANITIZE)
  add_compile_options(-fsanitize=${PAIRSTAND_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=undefined)
  # AddressSanitizer meets these when they are used; a check before each use takes long to compile.
  add_compile_options(-fno-sanitize=null,object-size)
  add_link_options(-fsanitize=${PAIRSTAND_SANITIZE})
  # Their own code makes GCC see variables without a value in std::regex and std::function.
  target_compile_options(house_rules INTERFACE $<$<CXX_COMPILER_ID:GNU>:-Wno-maybe-uninitialized>)
  if(PAIRSTAND_FUZZ) # libFuzzer is led by what the code under it does
    add_compile_options(-fsanitize=fuzzer-no-link)
    add_link_options(-fsanitize=fuzzer-no-link)
  endif()
endif()
# What only tests use: its own slips are looked for in memory, which what it tests shares with it; nothing leads a fuzzer
# through it. A third less to compile.
add_library(test_rules INTERFACE)
if(PAIRSTAND_SANITIZE)
  target_compile_options(test_rules INTERFACE $<$<CXX_COMPILER_ID:Clang>:-fno-sanitize=undefined,fuzzer-no-link>)
endif()
target_link_libraries(test_rules INTERFACE house_rules)
