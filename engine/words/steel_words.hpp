#pragma once
// Words of the sheets of steel and grout: the order of filling, joint reinforcement, what is hidden in each side, the
// top of the walls as read.
#include <string_view>

namespace stringcourse::words {

struct SteelWords {
  // The order of filling
  std::string_view title_order, lift_of, order_walk, cell, fill_now, fill_so_far, filled_at, cell_of, beam_of,
      beam_from, lintel_of, order_note, order_again;
  // Joint reinforcement
  std::string_view title_wire, wire_course, wire_stretch, wire_pieces, wire_ends, wire_ends_are[7], wire_last,
      wire_meet, wire_corners, wire_straight, wire_to_buy, wire_bent, wire_bought, wire_tees, wire_tees_bought,
      wire_note, note_stock, note_lap, note_leg;
  // Hidden in each side
  std::string_view title_map, title_map_filled, map_note, map_filled, map_bar, map_beam, map_lap, map_cleanout,
      map_dowel, map_open, map_nothing, map_no_bar;
  // Top of the walls as read
  std::string_view title_top_read, read_point, read_off, read_work, read_verdict, works[4], top_over, top_under,
      top_right, top_verdicts[4], top_bearing, top_read_note;
  // Entries of the laid log
  std::string_view grouted, again, looked_at, looked_at_what[5];
};

}  // namespace stringcourse::words
