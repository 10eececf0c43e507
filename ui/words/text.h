// Every fixed text that people see, by name. The words themselves are in config/languages/*.po under the same names.
#pragma once

#include <cstddef>
#include <iterator>
#include <optional>
#include <span>
#include <string_view>

namespace ui {

// clang-format off
#define PAIRSTAND_TEXTS(X) \
    /* Buttons and places */ \
    X(language_name) X(button_back) X(button_start_over) X(button_take_back) X(button_text_size) \
    X(button_read_aloud) X(voice_pause) X(voice_go_on) X(voice_again) X(voice_slower) X(voice_faster) \
    X(voice_quieter) X(voice_louder) X(voice_stop) X(voice_only) X(voice_only_off) X(voice_only_how) X(voice_button) \
    X(voice_heading) X(voice_button_chosen) X(voice_side) X(button_ways) X(ways_text) X(ways_colours) X(theme_paper) \
    X(theme_night) X(theme_plain) X(ways_voice) X(ways_voice_lead) X(ways_no_voice) X(ways_switch) \
    X(ways_switch_lead) X(ways_measure) X(ways_time) X(ways_idle_minutes) X(ways_idle_seconds) X(measure_title) \
    X(measure_lead) X(measure_much_smaller) X(measure_smaller) X(measure_larger) X(measure_much_larger) \
    X(measure_keep) X(notice_measured) X(notice_not_measured) X(still_there_title) X(still_there_lead) \
    X(still_there_go_on) X(button_group_view) X(button_choose_by_name) X(button_by_name) X(button_keep) \
    X(button_kept) X(button_page_before) X(button_page_next) X(page_of) X(button_open_label) X(button_compare) \
    X(left) X(right) X(side_left) X(side_right) \
    /* Welcome */ \
    X(welcome_title) X(welcome_lead) X(welcome_first) X(welcome_second) X(welcome_waiting) X(welcome_caution) \
    X(welcome_bundle) \
    /* Notices: the visible answer to a scan or a touch */ \
    X(notice_found) X(notice_already) X(notice_unknown) X(notice_unreadable) X(notice_other_code) X(notice_store_code) \
    X(notice_coupon) X(notice_case) X(notice_book) X(notice_not_assigned) X(notice_kept) X(notice_let_go) \
    X(notice_both_kept) X(notice_which) X(notice_likely) X(notice_likely_one) X(notice_started_over) \
    X(notice_taken_back) X(notice_reloaded) X(notice_demo) X(notice_settings) X(notice_settings_lines) \
    X(notice_settings_more) X(notice_settings_file) X(notice_language) X(notice_scanner_refused) \
    X(notice_scanner_busy) X(notice_scanner_no_port) X(notice_scanner_absent) X(notice_scanner_pulled) \
    X(notice_scanner_ready) X(notice_catalog_broken) \
    X(camera_ready) X(camera_private) X(camera_small) \
    X(camera_black) X(camera_none) X(camera_none_at) X(camera_unplugged) X(camera_stalled) X(camera_busy) \
    X(camera_refused) X(camera_format) X(camera_picture) X(camera_middle) X(camera_aim) X(camera_closer) \
    X(camera_back) X(camera_hold_still) X(camera_turn) X(camera_whole) \
    /* Not found, which of two, choose by name */ \
    X(not_found_title) X(not_found_code) X(not_found_what_to_do) X(not_found_read_package) X(which_title) \
    X(which_lead) X(likely_title) X(likely_title_one) X(likely_lead) X(likely_none) X(likely_none_one) \
    X(find_title) X(find_letters) X(find_space) X(find_by_aisle) X(find_lead) X(find_searching) \
    X(find_none) X(find_count_more) X(find_count_first) X(find_left_out_one) X(find_left_out_many) X(find_serving) \
    X(find_this_place) X(pick_aisle_title) X(pick_no_aisle) X(pick_empty) X(pick_count_one) X(pick_count_many) \
    /* One label, in the taught order */ \
    X(label_servings) X(servings_about) X(servings_varied) X(servings_single) X(servings_not_printed) \
    X(label_servings_teach) X(label_servings_teach_column) X(label_serving_size) X(label_net_quantity) \
    X(label_one_serving) X(label_as_prepared) X(label_per_container) X(label_ingredients) \
    X(ingredients_not_recorded) X(ingredients_on_package) X(ingredients_by_weight) X(ingredients_cut) \
    X(source_common) X(grain_heading) X(grain_within) X(grain_whole) X(grain_not_whole) X(grain_program) \
    X(grain_unclear) X(grain_none) X(sugars_heading) X(sugars_named) X(sugars_juice) X(sugars_none) \
    X(sugars_sources) X(allergens_heading) X(contains_entered) X(contains_absent) X(contains_not_recorded) \
    X(contains_in_text) X(allergens_recognized) X(allergens_unknown_words) X(allergens_in_ingredients) \
    X(allergens_none_recognized) X(allergens_in_doubt) X(allergens_may_contain) X(allergens_sesame) X(package_side) \
    X(package_caution_heading) X(package_caution) X(trans_fat_oil) X(trans_fat_rules) X(trans_fat_named) \
    X(trans_fat_look) X(trans_fat_not_recorded) X(allergen_milk) X(allergen_egg) X(allergen_fish) \
    X(allergen_crustaceans) X(allergen_tree_nuts) X(allergen_peanuts) X(allergen_wheat) X(allergen_soybeans) \
    X(allergen_sesame) X(label_caution) X(label_origin) X(label_this_place) X(pair_this_place) \
    X(label_origin_release) X(label_origin_typed) X(label_panel_older) X(label_audience_1_3) \
    X(label_audience_infant) X(label_scan_another) X(label_percent_guide) X(label_percent_guide_child) \
    X(label_not_significant) \
    /* The 5/20 reading, always in a sentence */ \
    X(reading_low) X(reading_between) X(reading_high) X(word_low) X(word_between) X(word_high) \
    /* Pair */ \
    X(basis_serving) X(basis_package) X(basis_same_g) X(basis_same_ml) X(basis_same) X(basis_same_cup) \
    X(basis_same_tablespoon) X(basis_same_teaspoon) X(basis_same_piece) X(basis_my) X(basis_other) \
    X(basis_my_chosen) X(basis_prepared) X(my_one_serving) X(my_servings) X(my_one_cup) X(my_cups) \
    X(my_one_tablespoon) X(my_tablespoons) X(my_one_piece) X(my_pieces) X(my_whole_package) X(my_half_package) \
    X(my_part_package) X(my_packages) X(sizes_same) X(sizes_differ) X(sizes_unlike) X(sizes_unknown) \
    X(side_servings_number) X(side_servings_one) X(side_servings_about) X(side_servings_about_one) \
    X(side_servings_varied) X(side_servings_single) X(side_servings_none) X(size_not_printed) X(package_is) \
    X(heading_calories) X(heading_first) X(heading_less_of) X(heading_more_of) X(heading_other) X(heading_other_one) \
    X(heading_continued) X(finding_left_less) X(finding_left_more) X(finding_left_fewer) X(finding_same) \
    X(finding_too_close) X(finding_not_printed) X(finding_not_comparable) X(why_audience) X(why_grams_against_ml) \
    X(why_no_metric) X(why_no_household) X(why_unlike_measures) X(why_not_prepared) X(why_varied) \
    X(why_servings_not_printed) X(why_servings_off) X(why_servings_net) X(why_percents) X(why_shown_per_serving) \
    X(why_offer) X(prepared_apart) X(inconsistent_side) X(inconsistent_label) X(contradicts_rule) \
    X(contradicts_nothing_sure) X(contradicts_percent) X(contradicts_whole) X(contradicts_net) X(panels_unlike) \
    X(guide_one_serving) X(guide_package) X(guide_short) X(guide_line) X(both_sides) X(range_percent) \
    X(range_percent_unsure) X(range_percent_any) X(about) X(just_under) X(range_amount) X(reading_changes) \
    X(reading_changes_amount) X(why_title) X(why_printed) X(why_not_printed) X(why_not_significant) X(why_amount) \
    X(why_percent) X(why_percent_of_amount) X(why_together) X(why_whole) X(why_part) X(why_serving_size) \
    X(why_household) X(why_servings) X(why_servings_exact) X(why_narrowed) X(why_net) X(why_times) \
    X(why_per_hundred) X(why_percent_counted) X(why_on_basis) X(why_percent_on_basis) X(why_range) \
    X(why_range_below) X(why_finding) X(why_less) X(why_same_figure) X(why_too_close) X(why_too_close_plain) \
    X(why_aim_less) X(why_aim_more) X(why_aim_common) X(why_good_to_know) X(why_vitamin_steps) X(why_low_sodium) \
    X(why_protein_percent) X(why_no_daily_value) X(why_sizes_differ_note) X(why_label_may_be_wrong) X(why_hint) \
    X(amounts_title) X(amounts_lead) X(amounts_servings) X(amounts_cups) X(amounts_tablespoons) X(amounts_pieces) \
    X(amounts_package) X(amounts_more) X(amounts_fewer) X(amounts_show) \
    /* Figures */ \
    X(less_than) X(percent_less_than) X(not_printed_short) X(not_significant_short) \
    /* Nutrients, in the order of the panel */ \
    X(n_calories) X(n_total_fat) X(n_saturated_fat) X(n_trans_fat) X(n_polyunsaturated_fat) X(n_monounsaturated_fat) \
    X(n_cholesterol) X(n_sodium) X(n_total_carbohydrate) X(n_dietary_fiber) X(n_soluble_fiber) X(n_insoluble_fiber) \
    X(n_total_sugars) X(n_added_sugars) X(n_sugar_alcohol) X(n_protein) X(n_vitamin_d) X(n_calcium) X(n_iron) \
    X(n_potassium) X(n_vitamin_a) X(n_vitamin_c) X(n_vitamin_e) X(n_vitamin_k) X(n_thiamin) X(n_riboflavin) \
    X(n_niacin) X(n_vitamin_b6) X(n_folate) X(n_vitamin_b12) X(n_biotin) X(n_pantothenic_acid) X(n_phosphorus) \
    X(n_iodine) X(n_magnesium) X(n_zinc) X(n_selenium) X(n_copper) X(n_manganese) X(n_chromium) X(n_molybdenum) \
    X(n_chloride) X(n_choline) X(n_fluoride) \
    /* What the words mean; the first texts are of the nutrients, in the order of the panel */ \
    X(button_words) X(words_title) X(what_is_this) X(what_calories) X(what_total_fat) X(what_saturated_fat) \
    X(what_trans_fat) X(what_polyunsaturated_fat) X(what_monounsaturated_fat) X(what_cholesterol) X(what_sodium) \
    X(what_total_carbohydrate) X(what_dietary_fiber) X(what_soluble_fiber) X(what_insoluble_fiber) \
    X(what_total_sugars) X(what_added_sugars) X(what_sugar_alcohol) X(what_protein) X(what_vitamin_d) \
    X(what_calcium) X(what_iron) X(what_potassium) X(what_vitamin_a) X(what_vitamin_c) X(what_vitamin_e) \
    X(what_vitamin_k) X(what_thiamin) X(what_riboflavin) X(what_niacin) X(what_vitamin_b6) X(what_folate) \
    X(what_vitamin_b12) X(what_biotin) X(what_pantothenic_acid) X(what_phosphorus) X(what_iodine) X(what_magnesium) \
    X(what_zinc) X(what_selenium) X(what_copper) X(what_manganese) X(what_chromium) X(what_molybdenum) \
    X(what_chloride) X(what_choline) X(what_fluoride) X(term_serving_size) X(what_serving_size) X(term_servings) \
    X(what_servings) X(term_daily_value) X(what_daily_value) X(term_guide) X(what_guide) X(term_same_amount) \
    X(what_same_amount) X(term_household) X(what_household) X(term_net_quantity) X(what_net_quantity) \
    X(term_as_packaged) X(what_as_packaged) X(term_as_prepared) X(what_as_prepared) X(term_not_significant) \
    X(what_not_significant) X(term_rule_2016) X(what_rule_2016) X(term_first_grain) X(what_first_grain) \
    X(term_whole_grain) X(what_whole_grain) X(term_concentrated_juice) X(what_concentrated_juice) X(term_allergen) \
    X(what_allergen) X(term_contains) X(what_contains) X(term_crustaceans) X(what_crustaceans) X(term_tree_nuts) \
    X(what_tree_nuts) X(term_hydrogenated) X(what_hydrogenated) X(term_dietitian) X(what_dietitian) \
    X(term_unit_price) X(what_unit_price) X(term_nist) X(what_nist) X(term_reference) X(what_reference) \
    X(term_claim) X(what_claim) X(term_wic) X(what_wic) X(term_cacfp) X(what_cacfp) X(term_child_programs) \
    X(what_child_programs) X(term_cfr) X(what_cfr) X(term_fda) X(what_fda) X(term_usda) X(what_usda) X(term_g) \
    X(what_g) X(term_mg) X(what_mg) X(term_mcg) X(what_mcg) X(term_kg) X(what_kg) X(term_oz) X(what_oz) X(term_lb) \
    X(what_lb) X(term_ml) X(what_ml) X(term_l) X(what_l) X(term_fl_oz) X(what_fl_oz) X(term_tbsp) X(what_tbsp) \
    X(term_tsp) X(what_tsp) X(term_pt) X(what_pt) X(term_qt) X(what_qt) X(term_gal) X(what_gal) \
    /* Shelf prices */ \
    X(prices_heading) X(prices_title) X(prices_lead) X(button_prices) X(button_prices_done) X(keypad_clear) \
    X(keypad_erase) X(price_side_unit) X(price_side_unit_serving) X(price_side_serving) X(price_side_alone) \
    X(price_serving) X(price_serving_about) X(price_cents) X(price_cent_one) X(price_below_cents) \
    X(price_below_cent) X(price_packages) X(price_pieces) X(price_piece_one) X(price_dozens) X(price_dozen_one) \
    X(price_left_less) X(price_right_less) X(price_left_little_less) X(price_right_little_less) X(price_same) \
    X(price_missing) X(price_no_net_quantity) X(price_net_quantity_unclear) X(price_unlike) X(price_rule) \
    X(unit_gram) X(unit_kilogram) X(unit_ounce) X(unit_pound) X(unit_millilitre) X(unit_litre) X(unit_fluid_ounce) \
    X(unit_pint) X(unit_quart) X(unit_gallon) X(unit_dry_pint) X(unit_dry_quart) X(unit_piece) X(unit_dozen) \
    X(unit_square_centimetre) X(unit_square_decimetre) X(unit_square_metre) X(unit_square_inch) X(unit_square_foot) \
    X(unit_square_yard) \
    /* Beside a figure */ \
    X(teaspoons_many) X(teaspoons_one) X(teaspoons_less) X(day_heading) X(day_from_to) X(day_months) X(day_ages) \
    X(day_ages_older) X(day_line_adults) X(day_line_children) X(day_activity) X(day_caution) X(day_source) \
    /* Published rules */ \
    X(rules_claims_note) X(rules_wic_note) X(rules_cacfp_note) X(ruleset_claims_calories) X(ruleset_claims_fat) \
    X(ruleset_claims_saturated_fat) X(ruleset_claims_cholesterol) X(ruleset_claims_sodium) X(ruleset_claims_sugars) \
    X(ruleset_claims_lean) X(ruleset_claims_sources) X(ruleset_claims_levels) X(ruleset_wic) X(ruleset_wic_before) \
    X(ruleset_cacfp) X(ruleset_cacfp_before) X(rule_calorie_free) X(rule_low_calorie) X(rule_reduced_calorie) \
    X(rule_light) X(rule_sugar_free) X(rule_no_added_sugar) X(rule_reduced_sugar) X(rule_sodium_free) \
    X(rule_salt_free) X(rule_very_low_sodium) X(rule_low_sodium) X(rule_light_in_sodium) X(rule_reduced_sodium) \
    X(rule_lightly_salted) X(rule_no_salt_added) X(rule_fat_free) X(rule_low_fat) X(rule_percent_fat_free) \
    X(rule_reduced_fat) X(rule_saturated_fat_free) X(rule_low_saturated_fat) X(rule_reduced_saturated_fat) \
    X(rule_cholesterol_free) X(rule_low_cholesterol) X(rule_reduced_cholesterol) X(rule_lean) X(rule_extra_lean) \
    X(rule_more) X(rule_within_disclosure_levels) X(rule_fiber_claim_without_fat) X(rule_high) X(rule_good_source) \
    X(rule_high_potency) X(rule_wic_cereal_iron) X(rule_wic_cereal_added_sugars) X(rule_wic_yogurt_added_sugars) \
    X(rule_wic_yogurt_vitamin_d) X(rule_wic_cereal_total_sugars) X(rule_wic_yogurt_total_sugars) \
    X(rule_cacfp_cereal_added_sugars) X(rule_cacfp_yogurt_added_sugars) X(rule_cacfp_cereal_total_sugars) \
    X(rule_cacfp_yogurt_total_sugars) X(rule_cited) X(rule_cited_days) X(rule_since) X(rule_until) X(rule_from_to) \
    X(rule_until_unsure) X(rule_from_to_unsure) X(date) X(month_1) X(month_2) X(month_3) X(month_4) X(month_5) \
    X(month_6) X(month_7) X(month_8) X(month_9) X(month_10) X(month_11) X(month_12) X(rule_line) X(rule_line_one) \
    X(rule_side) X(rule_both) X(rule_not_this_food) X(rule_not_this_food_alone) X(rule_all_alone) X(rule_meets) \
    X(rule_meets_not) X(rule_limit_meets) X(rule_limit_meets_not) X(rule_wic_meets) X(rule_wic_meets_not) \
    X(rule_cannot) X(rule_wic_cannot) X(rule_true_content) X(rule_why_straddles) X(rule_why_ounce) \
    X(rule_why_no_reference) X(rule_why_reference_words) X(rule_why_no_size) X(rule_why_unlike) \
    X(rule_why_not_printed) X(rule_why_no_percent) X(rule_why_off) X(rule_why_worked_back) X(rule_why_main_dish) \
    X(rule_why_other_food) X(rule_why_package) X(rule_why_unread) X(rule_limit) X(rule_limit_first) \
    X(rule_limit_decides) X(rule_limit_doubt) X(rule_named_limit) X(rule_below) X(rule_at_most) X(rule_at_least) \
    X(rule_of_daily) X(rule_of_calories) X(rule_per_reference) X(rule_per_reference_bare) X(rule_per_serving) \
    X(rule_per_portion) X(rule_per_ounces) X(rule_printed_in) X(rule_printed) X(rule_stands_for) X(rule_worked_out) \
    X(rule_reaches) X(rule_same_amount) X(rule_exact_ounce) X(rule_by_figures) X(rule_daily) X(rule_calories) \
    X(rule_protein) X(rule_ingredients) \
    /* Gallery of widgets */ \
    X(gallery_title) X(gallery_sample) \
    /* Errors and the terminal */ \
    X(error_row) X(error_line) X(error_column) X(error_found_expected) X(error_bad_row) X(error_found_nothing) \
    X(error_empty_cell) X(error_missing_column) X(error_unknown_column) X(error_unknown_column_near) \
    X(error_not_digits) X(error_wrong_length) X(error_wrong_check_digit) X(error_not_a_product_code) \
    X(error_bad_value) X(error_doubled) X(error_bad_row_bare) X(error_bad_encoding) X(error_too_large) \
    X(error_no_such_file) X(error_release_files) X(error_is_folder) X(error_no_catalog) X(error_newer_catalog) \
    X(error_torn_catalog) X(error_torn_file) X(error_catalog_missing) X(error_cannot_read) X(error_busy) \
    X(error_cannot_write) X(error_no_foods) X(error_no_bundle) X(error_newer_bundle) X(error_damaged_bundle) \
    X(error_damaged_part) X(error_cut_bundle) X(error_unknown_key) X(error_other_key) X(error_foreign_key) \
    X(error_older_bundle) X(error_nothing_before) X(error_damaged_record) X(error_no_key) X(error_already_there) \
    X(error_no_room) X(bundle_named) X(keys_made) X(keys_fingerprint) X(keys_none) X(keys_forgotten) X(seal_done) \
    X(seal_stayed) X(install_done) X(install_came_along) X(install_again) X(install_own_again) X(load_behind_bundle) \
    X(export_only_csv) X(desk_behind_bundle) X(release_taken) X(release_read) X(release_replaced) X(release_kept) \
    X(release_cancelled) X(release_none_taken) X(release_no_category) X(release_no_categories) X(release_no_market) \
    X(release_no_markets) X(release_and_more) X(release_not_taken) X(release_to_know) X(release_loose_rows) \
    X(release_audit) X(release_such_as) X(release_older_record) X(release_not_chosen) X(release_case) \
    X(release_not_a_product) X(release_wrong_digits) X(release_unreadable_code) X(release_no_code) \
    X(release_no_serving_size) X(release_no_name) X(release_no_nutrients) X(release_older_taken) \
    X(release_code_completed) X(release_no_derivation) X(release_worked_back) X(release_unit_guessed) \
    X(release_unit_unknown) X(release_nutrient_twice) X(release_text_cut) X(release_own_kept) \
    X(release_lost_amounts) X(release_bad_amounts) X(release_broken_row) X(load_foods) X(load_amounts) \
    X(load_products) X(load_progress) X(load_progress_left) X(load_progress_left_minutes) X(doubt_slipped_percent) \
    X(doubt_slipped_calories) X(doubt_slipped_line) X(doubt_unit) X(doubt_unit_unknown) X(doubt_kilojoules) \
    X(doubt_percent) X(doubt_percent_plain) X(doubt_panel_older) X(doubt_panel_2016) X(doubt_audience_adult) \
    X(doubt_audience_1_3) X(doubt_audience_infant) X(doubt_grid) X(doubt_per_hundred_g) X(doubt_per_hundred_ml) \
    X(doubt_part) X(doubt_parts) X(doubt_weight) X(doubt_calories) X(doubt_net) X(doubt_reference) \
    X(doubt_young_food) X(doubt_duplicate) X(doubt_in_container) X(doubt_in_prepared) X(doubt_severity_wrong) \
    X(doubt_severity_likely) X(doubt_severity_unusual) X(audit_none) X(audit_some) X(audit_rule) X(audit_more) \
    X(audit_hidden) X(audit_approved) X(audit_no_rule) X(audit_no_product) X(audit_no_doubt) X(audit_no_catalog) \
    /* What errors and citations name, as core and catalog say it in English */ \
    X(want_gtin) X(want_name) X(want_brand) X(want_aisle) X(want_note) X(want_entered_on) X(want_household) \
    X(want_serving_size) X(want_servings) X(want_net_quantity) X(want_nutrients) X(want_ingredients) \
    X(want_contains) X(want_reference_food) X(want_yes_or_no) X(want_category) X(want_worked_back) \
    X(want_second_worked_back) X(want_source) X(want_source_row) X(want_calories) X(want_amount) X(want_percent) \
    X(want_price) X(want_day) X(want_second_column) X(want_second_figures) X(want_or_household) \
    X(want_letters_shown) X(want_letters) X(want_formula) X(want_no_day) X(want_no_text) X(want_one_reading) \
    X(want_one_sign) X(want_point) X(want_zeros) X(want_short_form) X(want_check_digit) X(want_store_code) \
    X(want_no_coupon) X(want_no_book) X(want_product) X(want_all_digits) X(want_no_case) X(want_cells) \
    X(want_row_once) X(want_number_once) X(want_column_once) X(want_csv) X(want_new_workbook) X(want_workbook) \
    X(want_products) X(want_rows) X(want_header) X(want_quotes) X(want_no_password) X(want_at_most_bytes) \
    X(want_at_most) X(want_no_more) X(want_no_more_bytes) X(want_packed) X(want_name_once) X(want_names_inside) \
    X(want_usual_packing) X(want_no_bomb) X(want_shorter) X(want_no_type) X(want_not_deep) X(want_small_foods) \
    X(want_small_rows) X(want_few_foods) X(want_travels) X(want_line) X(want_counter) X(want_setting) \
    X(want_key_once) X(want_first_nutrients) X(want_rule_sets) X(want_auto_millimetres) X(want_millimetres) \
    X(want_never_seconds) X(want_keys) X(want_serial_port) X(want_milliseconds) X(want_one_of) \
    X(got_more_text) X(got_more_bytes) \
    X(got_bytes) X(got_byte) X(got_rows) X(got_columns) X(got_cells) X(got_packed_files) X(got_no_text) \
    X(got_old_workbook) X(got_no_workbook) X(got_locked_workbook) X(got_locked_file) X(got_quote) X(got_outside) \
    X(got_rare_packing) X(got_grows) X(got_name_twice) X(got_long_mark) X(got_type) X(got_deep) \
    X(cite_table_amended) X(cite_table) X(cite_table_bare) X(cite_to) X(cite_part) X(cite_apart) X(cite_classes) \
    /* The leader desk */ \
    X(load_taken_one) X(load_taken_many) X(load_into) X(load_replaced) X(load_differs_one) X(load_differs_many) \
    X(differs_before) X(differs_release) X(differs_serving_size) X(differs_more) X(load_row_left) X(load_rows_left) \
    X(load_nothing_one) X(load_nothing_many) X(load_no_good_row) X(load_as_it_was) X(load_not_written) X(load_mend) \
    X(load_more_faults_one) X(load_more_faults) X(load_tab) X(load_tab_others) X(desk_title) X(desk_shown) \
    X(desk_shown_bundle) X(desk_into) X(desk_files) X(desk_audit) X(desk_undo_load) X(desk_redo_load) \
    X(desk_undo_install) X(desk_report) X(desk_files_note) X(desk_audit_note) X(desk_undo_note) X(desk_redo_note) \
    X(desk_back_note) X(desk_report_note) X(desk_home) \
    X(desk_camera) X(desk_camera_note) X(desk_camera_lead) X(desk_camera_read) X(desk_keep_picture) \
    X(desk_keep_into) X(desk_picture_kept) X(desk_picture_none) X(desk_no_stick) X(desk_no_file) X(desk_locked) \
    X(desk_not_all) X(desk_look_again) X(desk_sheet) X(desk_release) X(desk_bundle) X(desk_file_line) \
    X(desk_sheet_rows) X(desk_sheet_refused) X(desk_sheet_faulty) X(desk_sheet_none) X(desk_sheet_first) \
    X(desk_sheet_faults) X(desk_sheet_tab) X(desk_release_folder) X(desk_release_zip) X(desk_release_json) \
    X(desk_release_day) X(desk_release_columns) X(desk_release_bytes) X(desk_release_records) X(desk_release_about) \
    X(desk_bundle_labels) X(desk_bundle_key) X(desk_key_accepted) X(desk_key_first) X(desk_age_newer) \
    X(desk_age_older) X(desk_key_foreign) X(desk_age_in_place) X(desk_age_before) X(desk_bundle_parts) X(desk_load) \
    X(desk_load_good) X(desk_audit_file) X(desk_install) X(desk_key_title) X(desk_key_lead) X(desk_key_then) \
    X(desk_key_same) X(desk_key_other) X(desk_key_refused) X(desk_work_looking) X(desk_work_preview) \
    X(desk_work_load) X(desk_work_audit) X(desk_work_approve) X(desk_work_install) X(desk_work_picture) \
    X(desk_work_undo) \
    X(desk_work_serves) X(desk_work_reading) X(desk_cancel) X(desk_undone) X(desk_undone_empty) X(desk_redone) \
    X(desk_nothing_to_undo) X(desk_ended) X(desk_stick_gone) X(desk_named_catalog) X(desk_done) X(desk_audit_title) \
    X(desk_audit_faults) X(desk_audit_of) X(desk_audit_approved) X(desk_rule_line) X(desk_rule_some) \
    X(desk_rule_all) X(desk_doubt_code) X(desk_approve) X(desk_approve_note) X(desk_approve_load) \
    X(rule_name_slipped_by_ten) X(rule_name_unit_swapped) X(rule_name_kilojoules) \
    X(rule_name_percent_against_amount) X(rule_name_other_panel) X(rule_name_other_audience) \
    X(rule_name_off_the_grid) X(rule_name_per_hundred) X(rule_name_part_over_whole) X(rule_name_parts_over_whole) \
    X(rule_name_heavier_than_serving) X(rule_name_calories) X(rule_name_servings_against_net) \
    X(rule_name_far_from_reference) X(rule_name_audience_of_food) X(rule_name_duplicate_name) X(compare_two) \
    X(compare_unknown) X(compare_case) X(compare_no_product) X(compare_same) X(compare_second) \
    X(compare_second_package) X(sound_none) \
    /* The voice */ \
    X(voice_code) X(spoken_g) X(spoken_kg) X(spoken_mg) X(spoken_mcg) X(spoken_ml) X(spoken_l) X(spoken_oz) \
    X(spoken_fl_oz) X(spoken_lb) X(spoken_tbsp) X(spoken_tsp) X(spoken_pt) X(spoken_qt) X(spoken_gal) \
    X(spoken_dry_pt) X(spoken_dry_qt) X(spoken_cm2) X(spoken_dm2) X(spoken_m2) X(spoken_sq_in) X(spoken_sq_ft) \
    X(spoken_sq_yd) X(spoken_iu) X(spoken_dollars) X(spoken_cents) X(spoken_money) X(spoken_percent) \
    X(spoken_percent_daily) X(spoken_percent_bare) X(spoken_percent_bare_daily) X(spoken_daily_value) X(spoken_one) \
    X(spoken_half) X(spoken_feminine) X(spoken_counted) X(spoken_1_3) X(spoken_2_3) X(spoken_1_4) X(spoken_3_4) \
    X(spoken_1_8) X(spoken_3_8) X(spoken_5_8) X(spoken_7_8) X(spoken_fraction) X(spoken_half_alone) X(spoken_mixed) \
    X(spoken_part_of) X(spoken_less_than) X(spoken_more_than) X(spoken_at_most) X(spoken_at_least) X(spoken_times) \
    X(spoken_divided) X(spoken_equals) X(spoken_plus) X(spoken_minus) X(spoken_plus_minus) X(spoken_to) \
    X(spoken_and) X(spoken_short)
// clang-format on

/// The name of a fixed text.
enum class TextId {
#define PAIRSTAND_TEXT_ID(name) name,
    PAIRSTAND_TEXTS(PAIRSTAND_TEXT_ID)
#undef PAIRSTAND_TEXT_ID
};

/// The names as they stand in the language files, in the order of TextId.
[[nodiscard]] std::span<const std::string_view> text_names();

/// The text with this name.
[[nodiscard]] std::optional<TextId> text_by_name(std::string_view name);

} // namespace ui
