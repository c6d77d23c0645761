#include "job/enum_names.hpp"
#include "measure/notation.hpp"
#include "document/answer_parts.hpp"
#include "document/answer_words.hpp"

namespace stringcourse::answer_parts {

namespace {

void write_point(JsonOut& out, std::string_view key, PlanPoint point) {
  out.list(key, [&] {
    out.number(point.x.in_nanometres());
    out.number(point.y.in_nanometres());
  });
}

void write_series(JsonOut& out, const Series& series) {
  out.object([&] {
    out.field("id", series.id);
    out.field("title", series.title);
    write_length(out, "full", series.full, series.tape);
    write_length(out, "half", series.half, series.tape);
    write_length(out, "thickness", series.thickness, series.tape);
    write_length(out, "height", series.height, series.tape);
    write_length(out, "joint", series.joint, series.tape);
    out.field("cells_assumed", series.cells_assumed);
    out.field("source", series.source.text);
    out.field("known", knowledge_name(series.source.knowledge));
  });
}

// An outside corner of one wall only (the end of an open outline) has nobody to run past.
void write_corner(JsonOut& out, const Building& building, const Layout& layout, std::size_t index) {
  const Corner& corner = building.corners[index];
  out.object([&] {
    out.field("name", corner.name);
    out.field("convex", corner.convex);
    write_point(out, "point", corner.point);
    if (corner.arriving >= 0) out.field("arriving", wall_name(building, corner.arriving));
    if (corner.leaving >= 0) out.field("leaving", wall_name(building, corner.leaving));
    if (corner.arriving < 0 || corner.leaving < 0 || index >= layout.arriving_through.size()) return;
    const int through = layout.arriving_through[index] != 0 ? corner.arriving : corner.leaving;
    out.field("through_in_course_1", wall_name(building, through));
  });
}

void write_wall(JsonOut& out, const Building& building, const Wall& wall) {
  out.object([&] {
    out.field("name", wall.name);
    out.field("start", wall.start_name);
    out.field("end", wall.end_name);
    out.field("interior", wall.interior);
    out.field("series", building.series_of(wall).id);
    write_length(out, "nominal", wall.nominal, building.tape);
    write_length(out, "actual", wall.actual, building.tape);
    write_point(out, "start_point", wall.start_point);
    out.field("heading", heading_name(wall.heading));
    out.field("place", wall.place);
  });
}

void write_junction(JsonOut& out, const Building& building, const Junction& junction) {
  out.object([&] {
    out.field("main", wall_name(building, junction.main));
    out.field("abutting", wall_name(building, junction.abutting));
    out.field("at", junction.at_abutting_start ? "start" : "end");
    out.field("kind", enum_name(junction.kind));
    write_length(out, "from", junction.from.distance_from_start(), building.tape);
    write_length(out, "to", junction.to.distance_from_start(), building.tape);
  });
}

void write_course(JsonOut& out, const Course& course, Tape tape) {
  out.object([&] {
    out.field("number", course.number);
    out.field("half_high", course.half_high);
    out.field("bond_beam", course.bond_beam);
    out.field("wire", course.wire);
    write_length(out, "unit_height", course.unit_height, tape);
    write_length(out, "top", course.top, tape);
  });
}

/// From the underside of the first bed joint to the top of the last course's units: what the job's height asks for.
Length height_as_built(const Building& building) {
  const Course& first = building.courses.front();
  return building.courses.back().top - first.top + first.unit_height + building.joint;
}

void write_opening(JsonOut& out, const Building& building, const ResolvedOpening& opening) {
  const Tape tape = building.tape;
  out.object([&] {
    out.field("name", opening.name);
    out.field("use", opening_use_name(opening.use));
    out.field("side", wall_name(building, opening.wall));
    write_length(out, "from", opening.from.distance_from_start(), tape);
    write_length(out, "to", opening.to.distance_from_start(), tape);
    write_length(out, "width", opening.width(), tape);
    write_length(out, "height", opening.height(), tape);
    write_length(out, "underside", opening.underside, tape);
    write_length(out, "soffit", opening.soffit, tape);
    out.field("first_course", opening.first_course);
    out.field("last_course", opening.last_course);
    if (opening.laid_from < opening.laid_to) {
      out.object("planned", [&] {
        out.field("laid_courses", opening.laid_courses);
        write_length(out, "from", opening.laid_from.distance_from_start(), tape);
        write_length(out, "to", opening.laid_to.distance_from_start(), tape);
      });
    }
    write_length(out, "asked_width", opening.asked_width, tape);
    write_length(out, "asked_height", opening.asked_height, tape);
    write_length(out, "packing_each_side", opening.packing_each_side, tape);
    write_length(out, "packing_head", opening.packing_head, tape);
    if (opening.lintel) {
      out.object("lintel", [&] {
        out.field("make", enum_name(opening.lintel->make));
        out.field("first_course", opening.lintel->first_course);
        out.field("courses", opening.lintel->courses);
        write_length(out, "least_bearing", opening.lintel->least_bearing, tape);
      });
    }
    out.field("place", opening.place);
  });
}

void write_control_joint(JsonOut& out, const Building& building, const ControlJoint& joint) {
  out.object([&] {
    out.field("side", wall_name(building, joint.wall));
    write_length(out, "from", joint.from.distance_from_start(), building.tape);
    write_length(out, "to", joint.to.distance_from_start(), building.tape);
    out.field("by_rule", joint.by_rule);
  });
}

}  // namespace

void write_found(JsonOut& out, std::string_view key, Length length, Tape tape) {
  out.object(key, [&] {
    out.field("text", tape_text(length, tape));
    out.field("nm", length.in_nanometres());
  });
}

std::string_view verdict_name(ground::Verdict verdict) {
  switch (verdict) {
    case ground::Verdict::Fits: return "fits";
    case ground::Verdict::DoesNotFit: return "does-not-fit";
    case ground::Verdict::CannotTell: return "cannot-tell";
    case ground::Verdict::NotRead: return "not-read";
  }
  return "";
}

void write_length(JsonOut& out, std::string_view key, Length length, Tape tape) {
  out.object(key, [&] {
    out.field("text", exact_text(length, tape));
    out.field("nm", length.in_nanometres());
  });
}

void write_building(JsonOut& out, const Building& building, const Layout& layout) {
  out.list("series", [&] {
    for (const Series& series : building.series) write_series(out, series);
  });
  out.list("corners", [&] {
    for (std::size_t index = 0; index < building.corners.size(); ++index) write_corner(out, building, layout, index);
  });
  out.list("sides", [&] {
    for (const Wall& wall : building.walls) write_wall(out, building, wall);
  });
  out.list("junctions", [&] {
    for (const Junction& junction : building.junctions) write_junction(out, building, junction);
  });
  out.list("courses", [&] {
    for (const Course& course : building.courses) write_course(out, course, building.tape);
  });
  write_length(out, "height", height_as_built(building), building.tape);
  out.list("openings", [&] {
    for (const ResolvedOpening& opening : building.openings) write_opening(out, building, opening);
  });
  out.list("control_joints", [&] {
    for (const ControlJoint& joint : building.control_joints) write_control_joint(out, building, joint);
  });
}

}  // namespace stringcourse::answer_parts
