#include "ground/as_found.hpp"
#include "measure/metres.hpp"
#include "measure/volume.hpp"
#include "sheet/hook_words.hpp"
#include "document/answer_parts.hpp"

namespace stringcourse::answer_parts {
namespace {

using namespace ground;

std::int64_t thousandths(double value) { return static_cast<std::int64_t>(value * 1000 + (value < 0 ? -0.5 : 0.5)); }

std::string_view corner_name(const Building& building, int corner) { return building.corners[static_cast<std::size_t>(corner)].name; }

std::string_view state_name(TapeAsFound::State state) {
  switch (state) {
    case TapeAsFound::State::NoReadings: return "no-readings";
    case TapeAsFound::State::Adjusted: return "adjusted";
    case TapeAsFound::State::NotDeterminate: return "not-determinate";
    case TapeAsFound::State::Impossible: return "impossible";
    case TapeAsFound::State::TooLarge: return "too-large";
  }
  return "";
}

std::string_view agreement_name(const TapeAsFound& tape) {
  if (tape.suspicion == Suspicion::NotLocatable) return "disagree";
  switch (tape.agreement) {
    case Agreement::Agree: return "agree";
    case Agreement::TooFar: return "too-far";
    case Agreement::TooNear: return "too-near";
    case Agreement::Unchecked: return "unchecked";
  }
  return "";
}

void write_pair(JsonOut& out, const Building& building, int from, int to) {
  out.list([&] { out.text(corner_name(building, from)), out.text(corner_name(building, to)); });
}

void write_line(JsonOut& out, const Building& building, const TapeAsFound& tape, const TapedLine& line) {
  out.object([&] {
    out.field("reading", static_cast<std::int64_t>(line.entry));
    out.field("from", corner_name(building, line.from));
    out.field("to", corner_name(building, line.to));
    write_length(out, "read", line.read, building.tape);
    write_found(out, "expected", line.expected, building.tape);
    const bool adjusted = tape.state == TapeAsFound::State::Adjusted && !line.slip;
    out.field("use", line.slip ? "slip" : line.wrong ? "blunder" : adjusted ? "adjusted" : "read");
    if (line.slip) write_length(out, "meant", line.slip->length, building.tape);
    if (line.again) {
      write_found(out, "against_first", *line.again, building.tape);
      out.field("agrees_with_first", line.agrees);
    }
    if (!adjusted) return;
    write_found(out, "correction", length_of(line.residual.value), building.tape);
    out.field("times_its_doubt_thousandths", thousandths(line.residual.standardised));
  });
}

void write_move(JsonOut& out, const Building& building, const PegMove& move) {
  out.object([&] {
    out.field("corner", corner_name(building, move.corner));
    out.field("text", move_text(building, move));
    write_found(out, "east", move.east, building.tape);
    write_found(out, "north", move.north, building.tape);
    write_found(out, "doubt", move.doubt, building.tape);
    out.field("within_doubt", move.within_doubt);
    write_found(out, "off", move.off, building.tape);
    write_found(out, "allowed", move.allowed, building.tape);
    out.field("verdict", verdict_name(move.verdict));
    out.object("ellipse", [&] {
      write_found(out, "longer", move.longer, building.tape);
      write_found(out, "shorter", move.shorter, building.tape);
      out.field("east_thousandths", thousandths(move.direction.x));
      out.field("north_thousandths", thousandths(move.direction.y));
    });
  });
}

void write_diagonals(JsonOut& out, const Building& building, const Diagonals& pair) {
  out.object([&] {
    out.name("longer");
    write_pair(out, building, pair.one[0], pair.one[1]);
    out.name("shorter");
    write_pair(out, building, pair.other[0], pair.other[1]);
    write_found(out, "difference", pair.difference, building.tape);
    write_found(out, "allowed", pair.allowed, building.tape);
    write_found(out, "doubt", pair.doubt, building.tape);
    out.field("verdict", verdict_name(pair.verdict));
  });
}

void write_tape(JsonOut& out, const Building& building, const TapeAsFound& tape) {
  out.object("tape", [&] {
    out.field("state", state_name(tape.state));
    out.field("verdict", verdict_name(tape.verdict));
    out.list("lines", [&] {
      for (const TapedLine& line : tape.lines) write_line(out, building, tape, line);
    });
    out.list("missing", [&] {
      for (const auto& [from, to] : tape.missing) write_pair(out, building, from, to);
    });
    if (tape.state != TapeAsFound::State::Adjusted) return;
    out.field("held", corner_name(building, tape.held));
    out.field("beyond_need", tape.freedom);
    out.field("agreement", agreement_name(tape));
    out.field("s0_thousandths", thousandths(tape.s0));
    out.field("s0_least_thousandths", thousandths(tape.s0_least));
    out.field("s0_most_thousandths", thousandths(tape.s0_most));
    out.list("tape_again", [&] {
      for (const std::size_t line : tape.tape_again) write_pair(out, building, tape.lines[line].from, tape.lines[line].to);
    });
    out.list("moves", [&] {
      for (const PegMove& move : tape.moves) write_move(out, building, move);
    });
    out.list("diagonals", [&] {
      for (const Diagonals& pair : tape.diagonals) write_diagonals(out, building, pair);
    });
  });
}

void write_station(JsonOut& out, const Building& building, const Station& station) {
  out.object([&] {
    out.field("name", station.name);
    if (station.place) {
      out.field("side", wall_name(building, station.place->wall));
      write_length(out, "at", station.place->along, building.tape);
    }
    out.field("surface", station.surface == Surface::Bearing ? "bearing" : station.surface == Surface::Floor ? "floor" : "other");
    write_found(out, "height", station.height, building.tape);
    write_found(out, "doubt", station.doubt, building.tape);
  });
}

std::string_view choice_name(BedChoice::What what) {
  switch (what) {
    case BedChoice::What::Level: return "level";
    case BedChoice::What::GroutFirstCourse: return "grout-first-course";
    case BedChoice::What::Grind: return "grind";
    case BedChoice::What::RipUnits: return "rip-units";
    case BedChoice::What::LevellingStrip: return "levelling-strip";
    case BedChoice::What::TiltCourse: return "tilt-course";
    case BedChoice::What::HalfHigh: return "half-high";
    case BedChoice::What::Step: return "step";
    case BedChoice::What::Curb: return "curb";
  }
  return "";
}

void write_bed(JsonOut& out, const Building& building, const BedAsFound& bed) {
  const Tape tape = building.tape;
  out.object("bed", [&] {
    out.field("verdict", verdict_name(bed.verdict));
    write_found(out, "least", bed.range.least, tape);
    write_found(out, "most", bed.range.most, tape);
    write_found(out, "top", bed.level.top, tape);
    write_found(out, "margin", bed.level.margin, tape);
    write_found(out, "thinnest", bed.level.thinnest, tape);
    write_found(out, "thickest", bed.level.thickest, tape);
    write_found(out, "doubt", bed.doubt, tape);
    out.field("units_without", bed.units_without);
    out.list("lacks", [&] {
      for (const std::string& name : bed.lacks) out.text(name);
    });
    out.list("units", [&] {
      for (const UnitBed& unit : bed.units) {
        out.object([&] {
          out.field("side", wall_name(building, unit.wall));
          out.field("number", unit.number);
          write_found(out, "thinnest", unit.thinnest, tape);
          write_found(out, "thickest", unit.thickest, tape);
        });
      }
    });
    out.list("choices", [&] {
      for (const BedChoice& choice : bed.choices) {
        out.object([&] {
          out.field("what", choice_name(choice.what));
          out.field("text", choice_text(choice, tape));
          write_found(out, "top", choice.top, tape);
          write_found(out, "margin", choice.margin, tape);
          out.field("mortar", bagged_text(choice.mortar_cubic_centimetres, Bagged::Mortar, tape));
          if (choice.concrete_cubic_centimetres > 0) {
            out.field("concrete", bagged_text(choice.concrete_cubic_centimetres, Bagged::Concrete, tape));
          }
          out.field("mortar_cubic_centimetres", choice.mortar_cubic_centimetres);
          out.field("concrete_cubic_centimetres", choice.concrete_cubic_centimetres);
        });
      }
    });
  });
}

void write_instrument(JsonOut& out, const Building& building, const Instrument& instrument) {
  out.object("instrument", [&] {
    write_found(out, "over", instrument.over, building.tape);
    write_length(out, "sight", instrument.sight, building.tape);
    write_found(out, "doubt", instrument.doubt, building.tape);
    out.field("level", instrument.level);
    out.field("corrected", instrument.corrected);
  });
}

void write_door(JsonOut& out, const Building& building, const DoorFloor& door) {
  out.object([&] {
    out.field("opening", building.openings[static_cast<std::size_t>(door.opening)].name);
    write_found(out, "tall_least", door.tall_least, building.tape);
    write_found(out, "tall_most", door.tall_most, building.tape);
    write_length(out, "planned", building.openings[static_cast<std::size_t>(door.opening)].height(), building.tape);
    write_found(out, "doubt", door.doubt, building.tape);
    out.field("verdict", verdict_name(door.verdict));
  });
}

void write_levels(JsonOut& out, const Building& building, const LevelsAsFound& levels) {
  out.object("levels", [&] {
    out.field("datum", levels.datum);
    out.list("stations", [&] {
      for (const Station& station : levels.stations) write_station(out, building, station);
    });
    out.list("loose", [&] {
      for (const std::string& name : levels.loose) out.text(name);
    });
    out.list("loops", [&] {
      for (const LoopVerdict& loop : levels.loops) {
        out.object([&] {
          write_found(out, "misclosure", loop.misclosure, building.tape);
          write_found(out, "allowed", loop.allowed, building.tape);
          out.field("closes", loop.closes);
        });
      }
    });
    out.list("setups", [&] {
      for (std::size_t k = 0; k < levels.setups.size(); ++k) {
        out.object([&] {
          out.field("name", levels.setups[k]);
          write_found(out, "height", levels.instruments[k], building.tape);
        });
      }
    });
    if (levels.instrument) write_instrument(out, building, *levels.instrument);
    out.list("doors", [&] {
      for (const DoorFloor& door : levels.doors) write_door(out, building, door);
    });
    if (levels.bed) write_bed(out, building, *levels.bed);
  });
}

void write_found_dowel(JsonOut& out, const Building& building, const steel::FoundDowel& dowel) {
  out.object([&] {
    out.field("reading", static_cast<std::int64_t>(dowel.entry));
    out.field("side", wall_name(building, dowel.wall));
    out.field("number", dowel.number);
    write_length(out, "at", dowel.along, building.tape);
    write_length(out, "off_face", dowel.off_face, building.tape);
    if (dowel.has_bar) write_found(out, "off_place", dowel.off_place, building.tape);
    write_found(out, "room", dowel.room, building.tape);
    out.field("action", steel::action_name(dowel.action));
    out.field("text", steel::action_text(dowel, building.tape));
  });
}

void write_dowel_layouts(JsonOut& out, const steel::DowelSearch& search) {
  out.list("dowel_layouts", [&] {
    for (const steel::DowelLayout& layout : search.layouts) {
      out.object([&] {
        out.field("text", steel::dowel_layout_text(layout));
        out.field("stands", layout.stands);
        out.field("cuts", layout.cuts);
        out.field("short_laps", layout.short_laps);
        out.field("bars", layout.bars);
        out.field("proven", layout.proven);
        out.list("kept", [&] {
          for (const std::string& id : layout.kept) out.text(id);
        });
      });
    }
  });
}

/// "5/8\" east, 1/2\" south"; "stays" where both are nothing on the tape.
std::string fit_text(const ground::SlabFit& fit, Tape tape) {
  std::string text;
  const auto add = [&](Length way, std::string_view positive, std::string_view negative) {
    const Length size = magnitude(way);
    if (rounded_to(size, tape_step(tape)) == Length()) return;
    text += (text.empty() ? "" : ", ") + tape_text(size, tape) + " " + std::string(way < Length() ? negative : positive);
  };
  add(fit.east, "east", "west"), add(fit.north, "north", "south");
  return text.empty() ? "stays" : text;
}

void write_fit(JsonOut& out, const Building& building, const ground::SlabFit& fit) {
  out.object("fit", [&] {
    out.field("text", fit_text(fit, building.tape));
    write_found(out, "east", fit.east, building.tape);
    write_found(out, "north", fit.north, building.tape);
    out.field("turn_micrometres_in_a_metre", static_cast<std::int64_t>(fit.turn * 1e6 + (fit.turn < 0 ? -0.5 : 0.5)));
    write_found(out, "room", fit.room, building.tape);
    write_found(out, "room_before", fit.room_before, building.tape);
  });
}

/// Rounded inwards, as printed; "nm" is exact.
void write_room(JsonOut& out, const steel::DowelRoom& room, Tape tape) {
  const auto write = [&](std::string_view key, Length length) {
    out.object(key, [&] {
      out.field("text", tape_text(steel::usable(length, tape), tape));
      out.field("nm", length.in_nanometres());
    });
  };
  out.object("room", [&] {
    write("to_start", room.to_start);
    write("to_end", room.to_end);
    write("to_outer", room.to_outer);
    write("to_inner", room.to_inner);
  });
}

void write_cell(JsonOut& out, std::string_view key, const Building& building, const std::optional<steel::InCell>& cell) {
  if (!cell) return;
  out.object(key, [&] {
    out.field("side", wall_name(building, cell->wall));
    out.field("unit", cell->unit);
    out.field("cell", cell->cell);
  });
}

/// One poured dowel, against the layout as it is now.
void write_dowel_now(JsonOut& out, const Answer& answer, const steel::DowelNow& now) {
  const Tape tape = answer.building.tape;
  const steel::Dowel& dowel = answer.dowels[now.dowel];
  out.object([&] {
    out.field("side", wall_name(answer.building, dowel.wall));
    out.field("number", dowel.number);
    if (now.found) write_length(out, "found_at", *now.found, tape);
    if (now.bar) write_length(out, "bar_at", *now.bar, tape);
  });
}

void write_poured(JsonOut& out, const Answer& answer) {
  if (!answer.dowels_now) return;
  out.object("poured", [&] {
    out.list("dowels", [&] {
      for (const steel::DowelNow& now : answer.dowels_now->dowels) write_dowel_now(out, answer, now);
    });
    out.list("bars_without_dowel", [&] {
      for (const steel::Dowel& bar : answer.dowels_now->without) {
        out.object([&] {
          out.field("side", wall_name(answer.building, bar.wall));
          write_length(out, "at", bar.along, answer.building.tape);
        });
      }
    });
  });
}

}  // namespace

void write_ground(JsonOut& out, const Answer& answer) {
  const Building& building = answer.building;
  out.object("ground", [&] {
    write_tape(out, building, answer.found.tape);
    if (answer.found.levels) write_levels(out, building, *answer.found.levels);
    out.list("dowels", [&] {
      for (const steel::FoundDowel& dowel : answer.found_dowels) write_found_dowel(out, building, dowel);
    });
    write_dowel_layouts(out, answer.dowel_search);
    if (!answer.slab.lacks.empty()) {
      out.list("fit_lacks", [&] {
        for (const std::string& one : answer.slab.lacks) out.text(one);
      });
    }
    if (answer.slab.fit) write_fit(out, building, *answer.slab.fit);
  });
}

void write_dowels(JsonOut& out, const Answer& answer, Placed placed) {
  const Building& building = answer.building;
  if (placed != Placed::Omit) write_poured(out, answer);
  out.list("dowels", [&] {
    for (const steel::Dowel& dowel : answer.dowels) {
      if (placed == Placed::Omit) return;
      out.object([&] {
        out.field("side", wall_name(building, dowel.wall));
        out.field("number", dowel.number);
        out.field("measured_from", sheet::hook_text(building, dowel.wall, sheet::kEnglish));
        write_length(out, "at", dowel.along, building.tape);
        write_length(out, "off_face", dowel.off_face, building.tape);
        write_cell(out, "first_course", building, dowel.first);
        write_cell(out, "second_course", building, dowel.second);
        if (dowel.room) write_room(out, *dowel.room, building.tape);
      });
    }
  });
}

}  // namespace stringcourse::answer_parts
