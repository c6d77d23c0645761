#include "setout/gauge_rod.hpp"
#include "setout/saw_list.hpp"
#include "document/answer_parts.hpp"
#include "document/answer_words.hpp"
#include "supply/counts.hpp"

namespace stringcourse::answer_parts {

namespace {

const std::string& series_id(const Building& building, int series) {
  return building.series[static_cast<std::size_t>(series)].id;
}

void write_units(JsonOut& out, const Building& building, const Layout& layout, const supply::Counts& counts) {
  out.list("units", [&] {
    for (const supply::UnitCount& unit : counts.units) {
      out.object([&] {
        out.field("series", series_id(building, unit.series));
        out.field("kind", kind_name(unit.kind));
        out.field("whole", unit.whole);
        out.field("cut_pieces", unit.pieces);
      });
    }
  });
  out.list("to_buy", [&] {
    for (const supply::Purchase& purchase : supply::units_to_buy(building, layout)) {
      out.object([&] {
        out.field("series", series_id(building, purchase.series));
        out.field("kind", kind_name(purchase.kind));
        out.field("whole", purchase.whole);
        out.field("for_saw", purchase.for_saw);
        out.field("spare", purchase.spare);
        out.field("total", purchase.to_buy());
      });
    }
  });
}

void write_other_counts(JsonOut& out, const Building& building, const Layout& layout) {
  out.list("corner_set_parts", [&] {
    for (const supply::PartCount& part : supply::corner_set_parts(building, layout)) {
      out.object([&] {
        out.field("series", series_id(building, part.series));
        out.field("part", part.part);
        out.field("work", supply::part_work_name(part.work));
        out.field("count", part.count);
        out.field("spare", part.spare);
        out.field("total", part.to_buy());
      });
    }
  });
  out.list("one_piece_lintels", [&] {
    for (const supply::LintelCount& lintel : supply::one_piece_lintels(building, layout)) {
      out.object([&] {
        write_length(out, "length", lintel.length, building.tape);
        out.field("courses", lintel.courses);
        out.field("count", lintel.count);
      });
    }
  });
  const supply::BarCount bars = supply::count_bars(building, layout);
  out.object("bars", [&] {
    out.field("size", bars.size);
    out.field("count", bars.bars);
    write_length(out, "total", bars.total, building.tape);
  });
  const supply::CleanoutCount cleanouts = supply::count_cleanouts(building, layout);
  out.object("cleanouts", [&] {
    out.field("count", cleanouts.all());
    out.field("in_cleanout_units", cleanouts.bought);
    out.field("to_cut", cleanouts.cut);
  });
}

void write_counts(JsonOut& out, const Building& building, const Layout& layout) {
  const supply::Counts counts = supply::count_units(building, layout);
  out.object("counts", [&] {
    out.field("pieces", counts.pieces);
    out.object("breakage", [&] {
      out.field("percent", building.breakage.percent);
      out.field("stated", building.breakage.stated);
    });
    write_units(out, building, layout, counts);
    write_other_counts(out, building, layout);
  });
}

void write_saw_group(JsonOut& out, const Building& building, const setout::SawGroup& group) {
  out.object([&] {
    out.field("series", series_id(building, group.series));
    out.field("from", kind_name(group.from));
    write_length(out, "from_length", group.from_length, building.tape);
    write_length(out, "length", group.length, building.tape);
    write_length(out, "offcut", group.offcut, building.tape);
    out.field("pieces", static_cast<std::int64_t>(group.places.size()));
    out.field("paired", group.paired);
  });
}

void write_saw_list(JsonOut& out, const Building& building, const Layout& layout) {
  const setout::SawList list = setout::saw_list(building, layout);
  out.object("saw_list", [&] {
    write_length(out, "kerf", setout::saw_kerf(building.tape), building.tape);
    out.list("groups", [&] {
      for (const setout::SawGroup& group : list.groups) write_saw_group(out, building, group);
    });
    out.list("pairs", [&] {
      for (const setout::SawPair& pair : list.pairs) {
        out.object([&] {
          out.field("first", pair.first);
          out.field("second", pair.second);
          out.field("units", pair.units);
        });
      }
    });
  });
}

void write_rod(JsonOut& out, const Building& building) {
  out.list("gauge_rod", [&] {
    for (const setout::RodMark& mark : setout::gauge_rod(building)) {
      out.object([&] {
        write_length(out, "at", mark.at, building.tape);
        out.field("event", rod_event_name(mark.event));
        if (mark.course > 0) out.field("course", mark.course);
        if (mark.opening >= 0) out.field("opening", building.openings[static_cast<std::size_t>(mark.opening)].name);
      });
    }
  });
}

}  // namespace

void write_lists(JsonOut& out, const Building& building, const Layout& layout) {
  write_counts(out, building, layout);
  write_saw_list(out, building, layout);
  write_rod(out, building);
}

}  // namespace stringcourse::answer_parts
