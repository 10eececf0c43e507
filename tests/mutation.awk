# Lists the mutations of one table of core/figure, each as "offset<TAB>length<TAB>replacement<TAB>name"; one that cannot
# change an answer is listed with the length "-" and its reason in place of the replacement. Used by mutation.sh.

function trim(s) { gsub(/^[ \n]+|[ \n]+$/, "", s); return s }

# Cuts text[from..to] at commas that stand in no braces; fills cut[], at[], returns how many.
function cut_up(from, to,    i, c, depth, begin, n) {
    n = 0; depth = 0; begin = from
    for (i = from; i <= to + 1; i++) {
        c = substr(text, i, 1)
        if (i > to || (c == "," && depth == 0)) {
            raw = substr(text, begin, i - begin)
            n++
            cut[n] = trim(raw)
            at[n] = begin + index(raw, substr(cut[n], 1, 1)) - 1
            begin = i + 1
        } else if (c == "{") depth++
        else if (c == "}") depth--
    }
    if (cut[n] == "") n-- # a comma behind the last one
    return n
}

function mutate(offset, old, new, name) { printf "%d\t%d\t%s\t%s: %s\n", offset - 1, length(old), new, name, new }
function same(reason, name) { printf "0\t-\t%s\t%s\n", reason, name }

# One step up, and one down or to 0 where it is less than a step.
function both_ways(offset, old, step, name) {
    mutate(offset, old, "(" old ") + (" step ")", name)
    if (number(old) > 0)
        mutate(offset, old, number(old) > number(step) ? "(" old ") - (" step ")" : "0", name)
}

function bands(name, open, close_,    n, i, rows, row_at, m, step) {
    n = cut_up(open, close_)
    for (i = 1; i <= n; i++) { rows[i] = cut[i]; row_at[i] = at[i] }
    for (i = 1; i <= n; i++) {
        m = cut_up(row_at[i] + 1, row_at[i] + length(rows[i]) - 2)
        if (i == 1) { first_step[name] = step = cut[2]; first_from[name] = cut[1] }
        if (i == 1 && name == "serving_size") same("below the first band its step holds all the same", name " band 1 from")
        else both_ways(at[1], cut[1], step, name " band " i " from") # by the step below it
        step = cut[2]
        mutate(at[2], cut[2], "(" step ") * 2", name " band " i " step")
        mutate(at[2], cut[2], "(" step ") / 2", name " band " i " step")
    }
}

# The number of an expression of the table, left to right: "8 * mg / 10".
function number(expression,    word, n, i, value, x) {
    n = split(expression, word, " ")
    for (i = 1; i <= n; i += 2) {
        x = word[i]
        if (x in unit) x = unit[x]
        value = i == 1 ? x : word[i - 1] == "*" ? value * x : value / x
    }
    return value
}

function rule(name, open, close_,    n, step, of_percent, field) {
    n = cut_up(open, close_)
    step = first_step[cut[8]]
    of_percent = name ~ /percent/
    split("citation,zero_below,less_than,less_than_from,less_than_first,holds_its_end,may_be_left_out", field, ",")
    if (number(cut[2]) > 0 && first_from[cut[8]] == "0" && 2 * number(cut[2]) <= number(step)) {
        mutate(at[2], cut[2], "(" cut[2] ") + (" step ")", name " zero_below")
        same("what rounds to 0 reaches further", name " zero_below: 0")
    } else {
        both_ways(at[2], cut[2], step, name " zero_below")
    }
    both_ways(at[3], cut[3], step, name " less_than")
    if (cut[3] == "0") {
        same("read only where there is a \"less than\"", name " less_than_from, less_than_first, holds_its_end")
    } else {
        both_ways(at[4], cut[4], step, name " less_than_from")
        mutate(at[6], cut[6], cut[6] == "true" ? "false" : "true", name " holds_its_end")
        if (of_percent) same("percents are printed as numbers only", name " less_than_first")
        else both_ways(at[5], cut[5], step, name " less_than_first")
    }
    if (of_percent) same("it is the amount that is left out", name " may_be_left_out")
    else both_ways(at[7], cut[7], step, name " may_be_left_out")
}

function places(open, close_,    n, i, rows, row_at, m) {
    n = cut_up(open, close_)
    for (i = 1; i <= n; i++) { rows[i] = cut[i]; row_at[i] = at[i] }
    for (i = 1; i <= n; i++) {
        m = cut_up(row_at[i] + 1, row_at[i] + length(rows[i]) - 2)
        mutate(at[2], cut[2], "(" cut[2] ") * 10", cut[1] " code place")
        mutate(at[3], cut[3], "(" cut[3] ") * 10", cut[1] " guidance place")
        if (every) {
            mutate(at[2], cut[2], "(" cut[2] ") / 10", cut[1] " code place")
            mutate(at[3], cut[3], "(" cut[3] ") / 10", cut[1] " guidance place")
        }
    }
}

function daily_values(open, close_,    n, i, rows, row_at, m, place, digits) {
    n = cut_up(open, close_)
    for (i = 1; i <= n; i++) {
        sub(/^(\/\/[^\n]*\n *)+/, "", cut[i]) # the comment of the row before
        rows[i] = cut[i]
        row_at[i] = index(text, cut[i])
    }
    for (i = 1; i <= n; i++) {
        if (rows[i] !~ /^\{/) continue
        m = cut_up(row_at[i] + 1, row_at[i] + length(rows[i]) - 2)
        digits = cut[4]; gsub(/'/, "", digits)
        place = 1
        while (digits % (place * 10) == 0) place *= 10 # its last digit that is not 0
        mutate(at[4], cut[4], cut[4] " + " sprintf("%.0f", place), cut[1] " " cut[2] " " cut[3])
        if (every) mutate(at[4], cut[4], cut[4] " - " sprintf("%.0f", place), cut[1] " " cut[2] " " cut[3])
    }
}

BEGIN { unit["g"] = unit["kcal"] = unit["one"] = 1; unit["mg"] = 0.001; unit["mcg"] = 0.000001 }
{ text = text $0 "\n" }

END {
    from = 1
    while (match(substr(text, from), /constexpr (Band|RoundingRule|VitaminPlace|DailyValueRow) [a-z_]+(\[\] = )?\{/)) {
        head = substr(text, from + RSTART - 1, RLENGTH)
        open = from + RSTART - 1 + RLENGTH
        end = open + index(substr(text, open), "};") - 2
        split(head, word, /[ \[{]/)
        if (word[2] == "Band") bands(word[3], open, end)
        else if (word[2] == "RoundingRule") rule(word[3], open, end)
        else if (word[2] == "VitaminPlace") places(open, end)
        else daily_values(open, end)
        from = end
    }
}
