#pragma once
// Words of the sheets for the pour: what numbers are measured from, dowels, form boards, templates, corners, cleanouts.
#include <string_view>

namespace stringcourse::words {

struct PourWords {
  // What stands at zero of a wall's numbers, and along which of its faces they run.
  std::string_view outer_corner, inside_corner, met_face, met_inner, free_end, along_outer, along_either, marks_hooked,
      marks_held, behind_corner;
  // Dowel list
  std::string_view list_heading, centre_at, in_from_line, from_outer, from_either, cell_of_course, room_to_start,
      room_to_end, room_across, cell_own, cell_other, no_cell, list_note, lap_note, form_here, form_at, form_unknown;
  // Template
  std::string_view template_line, template_inner_line, template_is_form, template_form_at, template_form_unknown,
      template_parallel, template_use, template_from_line, template_from_this, template_from_form, template_places,
      template_other_line, template_other_lines, template_board;
  // Form board
  std::string_view title_form_boards, title_board_inner, board_dowel, board_note, board_form_line, board_before,
      board_after, board_unknown;
  // Cleanouts
  std::string_view cleanouts, cleanouts_bought, cleanouts_cut, cleanouts_both, cleanout_note, cleanout_wedge,
      cleanout_mark_note;
  // Corners
  std::string_view title_corners, corner_course, corner_unit, corner_bar, corner_cell, corner_note, corner_runs,
      corner_alike;
};

}  // namespace stringcourse::words
