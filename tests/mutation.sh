#!/bin/bash
# Shows that the tests hold every number of the rounding rules and Daily Values: changes one of them by one step, builds,
# and looks for a test that fails; then the next. Works on a copy of the tree in a temporary folder.
#   mutation.sh             every band, field and place one step up, bands and fields also down; 22 minutes on two cores
#   mutation.sh every       places and Daily Values down as well
#   mutation.sh some WORD   only those whose name holds WORD
# Prints a table: the mutation and the test that noticed it. Exit status: 0 all noticed, 1 some not, 2 could not be tried.
set -euo pipefail
checkout=$(realpath "$(dirname "$(realpath "$0")")/..")
export LC_ALL=C
every=0
word=
case ${1:-} in
every) every=1 ;;
some) word=${2:?mutation.sh: some what?} ;;
esac
folder=$(mktemp -d "${TMPDIR:-/tmp}/pairstand-mutation.XXXXXX")
trap 'rm -rf "$folder"' EXIT
tree=$folder/tree
build=$folder/build
mkdir "$tree"
git -C "$checkout" ls-files -z --cached --others --exclude-standard | (cd "$checkout" && xargs -0 cp --parents -t "$tree")

give_up() {
    echo "mutation: $*" >&2
    exit 2
}
make_tests() { # make_tests TARGETS...: the last lines of what went wrong are in $folder/log
    nice ninja -C "$build" -j"${PAIRSTAND_JOBS:-$(nproc)}" "$@" >"$folder/log" 2>&1
}
# The tables' own tests; what else would notice takes longer.
declare -A filter=([tests_reference]='-tce=gtin*,unit_price*,*amounts of food*'
    [tests_core]='-tc=rounding:*,percent:*,percent only:*,daily*,sharpen:*,sizes:*')
declare -A place=([tests_reference]=tests/reference [tests_core]=tests/core)
noticed_by() { # noticed_by PROGRAM: the name of the first test that fails
    local status=0
    timeout 120 "$build/${place[$1]}/$1" "${filter[$1]}" --abort-after=1 --no-colors=true >"$folder/out" 2>&1 || status=$?
    [ "$status" -ne 0 ] || return 1
    [ "$status" -ne 124 ] || echo "$1 does not end"
    sed -n 's/^TEST CASE: *//p' "$folder/out" | head -n 1
}

cmake -G Ninja -S "$tree" -B "$build" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS="-O0 -g0 -D_GLIBCXX_ASSERTIONS" \
    >"$folder/log" 2>&1 || give_up "cmake: $(tail -n 3 "$folder/log")"
make_tests tests_reference tests_core || give_up "does not build unchanged: $(tail -n 5 "$folder/log")"
for program in tests_reference tests_core; do
    if name=$(noticed_by "$program"); then give_up "fails unchanged: $program: $name"; fi
done

noticed=0
equal=0
survivors=0
broken=0
for table in rounding_table daily_values_table; do
    source=$tree/core/figure/$table.cpp
    cp "$source" "$folder/original"
    awk -v every=$every -f "$checkout/tests/mutation.awk" "$folder/original" >"$folder/mutations"
    [ -s "$folder/mutations" ] || give_up "found nothing to change in core/figure/$table.cpp"
    while IFS=$'\t' read -r offset length new name; do
        [[ $name == *"$word"* ]] || continue
        if [ "$length" = - ]; then
            printf '%-72s | no answer can change: %s\n' "$name" "$new"
            equal=$((equal + 1))
            continue
        fi
        { head -c "$offset" "$folder/original"; printf %s "$new"; tail -c "+$((offset + length + 1))" "$folder/original"; } >"$source"
        by=
        for program in tests_reference tests_core; do
            if ! make_tests "$program"; then
                by="(does not compile)"
                broken=$((broken + 1))
                tail -n 5 "$folder/log"
            elif ! by=$(noticed_by "$program"); then
                by=
                continue
            fi
            break
        done
        if [ -n "$by" ]; then noticed=$((noticed + 1)); else survivors=$((survivors + 1)); fi
        printf '%-72s | %s\n' "$name" "${by:-NOTICED BY NONE}"
    done <"$folder/mutations"
    cp "$folder/original" "$source"
done
echo "mutation: $((noticed - broken)) noticed, $survivors noticed by none, $broken do not compile, $equal rows where no answer can change"
[ "$survivors" -eq 0 ] && [ "$broken" -eq 0 ] && [ "$noticed" -gt 0 ]
