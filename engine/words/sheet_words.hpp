#pragma once
// All words of the sheets, in one place per language. {0}, {1} ... stand for values; fill_in() puts them in.
#include <initializer_list>
#include <string>
#include <string_view>

#include "walls/building.hpp"
#include "words/bar_words.hpp"
#include "words/grout_words.hpp"
#include "words/language.hpp"
#include "words/order_words.hpp"
#include "words/pour_words.hpp"
#include "words/steel_words.hpp"
#include "words/top_words.hpp"

namespace stringcourse::words {

/// One language. Every sentence a sheet can carry; adding a language is adding one more of these.
struct SheetWords {
  // Title block and margins
  std::string_view job, sheet, scale, issued, drawn_by, sheet_of, not_to_scale, caution, print_ruler, untitled, part_of,
      match_line;
  // What each sheet is for, at its hold point
  std::string_view used_for, used_at, block, purpose_summary, purpose_names, purpose_sides, purpose_findings,
      purpose_saw, purpose_standards, purpose_setting_out, purpose_dowels, purpose_forms, purpose_corners,
      purpose_templates, purpose_pegs, purpose_readings, purpose_beds, purpose_plan, purpose_strips, purpose_rod,
      purpose_changes, purpose_marks, purpose_log, purpose_elevations, purpose_openings, purpose_lintel_bars,
      purpose_upper, purpose_pour, purpose_bars, purpose_bars_to_buy, purpose_top, purpose_reading_form, purpose_shores,
      purpose_inspection, purpose_bolts, purpose_weather, purpose_forecast, purpose_order, purpose_reckoned,
      purpose_days, purpose_chart, purpose_drops, purpose_pallets, purpose_filling, purpose_wire, purpose_map,
      purpose_top_read;
  // Forms to write in, grout and top
  std::string_view title_reading_form, form_rod, form_corner, form_middle, form_dowels, form_again, form_note,
      title_pour_card, pour_heading, pour_beams, pour_cells, pour_which, pour_seen, pour_full, pour_dowels, pour_places,
      pour_note, title_top, top_planned, top_start, top_middle, top_end, top_bars, top_note;
  // Titles
  std::string_view title_summary, title_findings, title_plan, title_one_strip, title_two_strips, title_both_strips,
      title_strip, title_strip_inside, title_elevation, title_openings, title_saw, title_gauge_rod, title_lead_table,
      title_names, name_key, name, names_note, with_offer;
  // Summary
  std::string_view courses, half_high_courses, height_to_top, units_laid, saw_cuts, cut_lengths, short_laps,
      short_pieces, shifted_joints, bars, bars_none, lintels, proof_whole, proof_laps_and_cuts, proof_gap, side,
      nominal, actual, count, to_buy, buy_breakage_stated, buy_breakage_assumed, buy_no_breakage, tallies, sizes, units,
      findings, standards, how_known, notes, hold_point, relaxed_piece, relaxed_bearing, conceded, proof_conceded,
      proof_conceded_gap, stopped_run, bar_length, lintel_entry, cut_entry, part_webs_cut, part_half_high, more_follow,
      findings_behind, on_request;
  // Plan
  std::string_view start_corner, order_of_corners, runs_through, butts, free_end, meets, butter, both_ends, jamb, bar,
      joint_edge, block_end_rule, bed_note, wire_note, closure_note, leads_note, leads_elsewhere, second_note,
      whole_plan_note, bar_note, opening_size, mortar_note, arrow_note, face_of, box_note;
  // Lintels
  std::string_view lintel_bearing, lintel_bears, lintel_bearing_asked, lintel_one_piece, lintel_length, lintel_floor,
      lintel_form, lintel_units, lintel_units_form, lintel_nothing, lintel_tally, lintel_tally_floors,
      title_lintel_bars, lintel_bar_where, lintel_bar_cell, lintel_bar_at, lintel_bar_do, lintel_break_out,
      lintel_cored, lintel_bar_note, floor_mark_note;
  // Elevation
  std::string_view same_rule, seen_from, seen_with_start, seen_inside, seen_other_side, control_joint, course, height,
      sill, head, floor, pour_stop, wire, datum_note, elevation_note, wire_mark_note, pour_mark_note;
  // Legend of exceptions
  std::string_view legend_half, legend_cut, legend_bond_beam, legend_lintel, legend_sash, legend_open_end,
      legend_open_both, legend_cleanout, legend_corner_set, legend_half_high, legend_solid;
  // Lists
  std::string_view opening, masonry_opening, from_corner, underside, asked, lintel, none, cut_key, piece_length,
      cut_from, offcut, pieces, places, saw_rule, factory_start, factory_end, pairs_with, rod_event, rod_top,
      rod_lintel, rod_bond_beam, rod_course, rod_note, use_door, use_overhead, use_window, use_plain, lead_note, corner,
      schedule_note, wide, high, from_named, packed, packed_each_side, packed_head;
  // The ground as found
  std::string_view title_setting_out, card_what, card_wanted, card_says, card_read, card_tapes, card_side,
      card_diagonal, card_squares, card_slip, card_boards, card_line, card_sag, card_supports, card_no_support,
      card_too_wide, card_pull_without, card_too_much, card_note, card_rod, card_rod_reads, card_rod_under,
      card_rod_over, card_boards_top, card_bearing, card_course_one, card_head, card_sill, card_floor,
      kerf_footing_outside, kerf_outer_face, kerf_dowel_line, kerf_inner_face, kerf_footing_inside;
  std::string_view title_dowels, dowel, found_dowels, found_off, found_at_place, found_off_face, found_saving,
      found_saving_now, found_instrument, found_instrument_up, found_instrument_down, found_instrument_level,
      found_door, found_door_tall, found_concrete, found_second, found_second_agrees, found_second_not, found_fit,
      found_fit_shift, found_fit_turn, found_fit_turned, found_fit_room, found_east, found_west, found_north,
      found_south;
  std::string_view title_form_board, title_template, template_to_corner, template_list, title_found_plan, title_found,
      title_bed_profile, found_what, found_read, found_against, found_says, found_tapings, found_moves, found_levels,
      found_benchmark, found_corners, found_recommended, found_recommended_one, found_else, found_chosen, found_loop,
      found_closes, found_does_not_close, found_bed, found_bed_top, found_margin, found_mortar, found_rod, found_held,
      found_ellipse, found_ellipse_note, found_leave, found_within_doubt, found_slip, found_blunder, found_correction,
      found_fits[3], found_tape_again, found_under, found_profile_note, found_profile_note_inches, found_profile_limits,
      paint_jambs, paint_head, paint_note, chalk_lines, chalk_edges, chalk_edge;
  std::string_view found_tape_too, found_diagonals, found_longer, found_allowed, found_no_moves, found_read_too,
      found_bags, found_fit_lacks;
  std::string_view poured_heading, poured_since, poured_found, poured_bar, poured_no_bar, poured_no_dowel, poured_off;
  // At the wall
  std::string_view title_marks, mark, mark_is, mark_found, mark_next, mark_course, mark_unit, mark_end_unit,
      mark_near_jamb, mark_far_jamb, mark_near_edge, mark_far_edge, mark_bar, mark_closes, mark_past, mark_short,
      mark_on, mark_doubtful, mark_disputed, marks_note, marks_one_joint, mark_loses, mark_jamb, mark_corner,
      mark_control_joint, mark_wall_end, mark_lintel, mark_wall_met;
  std::string_view title_laid, laid_when, laid_what, laid_reading, laid_says, laid_struck, laid_mark, laid_units,
      laid_row, laid_singles, laid_mean, laid_course, laid_gauge, laid_high, laid_low, laid_beds, laid_no_beds,
      laid_gap, laid_gap_open, laid_no_closure, laid_set, laid_bed, laid_lift, laid_right, laid_tap, laid_corners[4],
      laid_line_out, laid_line_in, laid_checks[6], laid_verdicts[3], laid_limits, laid_found, laid_far_end, laid_remark,
      laid_then, laid_strike, laid_photos, laid_progress, laid_pace, laid_unused, title_changes, change_where,
      change_units, change_none, change_note;
  // Names of kinds, in the order of UnitKind; names of the hold points, in their order; how a figure is known, beside
  // it
  std::string_view kinds[17];
  std::string_view hold_points[6];
  std::string_view knowledge[8];  // in the order of Knowledge
  // Cautions, where the catalogue has none of its own
  std::string_view caution_general, caution_saw, caution_lintel, caution_dowels;
  PourWords pour;
  GroutWords grout;
  BarWords bars_cut;
  TopWords top;
  SteelWords steel;
  OrderWords order;
};

/// English, as in Britain and Australia.
extern const SheetWords kEnglish;
/// A language as the building's masons speak it: see is_american().
[[nodiscard]] const SheetWords& words_of(const Building& building, const Language& language = english());

/// `pattern` with {0}, {1} ... replaced by the values; a value is never read as a pattern itself.
[[nodiscard]] std::string fill_in(std::string_view pattern, std::initializer_list<std::string> values);

}  // namespace stringcourse::words
