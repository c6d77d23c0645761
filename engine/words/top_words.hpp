#pragma once
// Words of the sheets for lintels' shores, the look before a pour, the plate's bolts, weather and wind.
#include <string_view>

namespace stringcourse::words {

struct TopWords {
  // Shores
  std::string_view title_shores, head_over, bears_on, held, beams_there, over_floor, over_sill, over_bearing, seat,
      no_seat, lifted_in, shores_stated, shores_unstated, no_lintel, beam_in, beam_cut, beam_over, shores_note;
  // Lintels as the drawings have them
  std::string_view lintel_called, lintel_pieces[2], lintel_weighs, lintel_steel;
  // Heads off a course line
  std::string_view title_heads, head_ways, head_units, head_cuts, head_says[5], head_asked, heads_note;
  // Before the pour
  std::string_view title_inspection, pour_of, bars_there, holes_there, floors_there, beam_ready, lintel_ready,
      photos_there, photos_as, at_place, inspection_note;
  // Bolts
  std::string_view title_bolts, plate, plate_from, bolts, bolts_at, none_between, nearest_behind, bolts_asked,
      bolts_asked_bars, bolts_asked_trusses, bolts_grout, bolts_note;
  // The plate from above
  std::string_view title_plate, plate_ends, no_bolt_here, trusses_given, plan_bolts, plan_bars, plan_trusses, plan_laps,
      plan_plate, plan_gaps;
  // The zone beside walls without their final support
  std::string_view title_zone, zone_beside, zone_note, zone_section, zone_no_height;
  // The height over which a wall is braced
  std::string_view brace_line_note;
  // Weather and wind
  std::string_view title_weather, cold, hot, wind, weather_note, title_forecast, forecast_days, forecast_asks,
      forecast_day, forecast_what, forecast_known, forecast_on, forecast_nothing, forecast_pour, forecast_note;
};

}  // namespace stringcourse::words
