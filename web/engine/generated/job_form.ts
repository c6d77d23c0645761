// Made by tools/contract_types.mjs from docs/schema/job.schema.json. Not to be changed by hand.

export interface FormField {
  readonly name: string;
  readonly kind: "text" | "length" | "whole" | "truth" | "choice" | "part";
  /// A list of such.
  readonly list?: true;
  /// The part that it is, or of which it is a list.
  readonly part?: string;
  readonly choices?: readonly string[];
  /// A text of several lines.
  readonly long?: true;
  readonly needed?: true;
  /// Fields that cannot stand beside it.
  readonly instead?: readonly string[];
  readonly help: string;
}

export interface FormPart {
  readonly help: string;
  /// Exactly one of these is wanted.
  readonly one: readonly string[];
  readonly fields: readonly FormField[];
}

export const jobForm: Readonly<Record<string, FormPart>> = {
  "job": {
    "help": "A job: a small building of reinforced concrete block, as wanted. A length is a text such as 24'-0\", 7 5/8\" or 4451 mm; a number without a unit is inches or millimetres as the tape says. Where both can be meant a length is nominal, unless the word actual follows it.",
    "one": [],
    "fields": [
      {
        "name": "stringcourse",
        "kind": "whole",
        "needed": true,
        "help": "Version of this form of document."
      },
      {
        "name": "name",
        "kind": "text",
        "help": "Name of the job."
      },
      {
        "name": "notes",
        "kind": "text",
        "long": true,
        "help": "Notes."
      },
      {
        "name": "drawn_by",
        "kind": "text",
        "help": "Who made the job, for the sheets."
      },
      {
        "name": "issued",
        "kind": "text",
        "help": "Date and revision for the sheets, in your own words: 2027-03-01, revision B."
      },
      {
        "name": "tape",
        "kind": "choice",
        "choices": [
          "inches",
          "millimetres"
        ],
        "needed": true,
        "help": "The tape that the job is worked with."
      },
      {
        "name": "units",
        "kind": "part",
        "part": "units",
        "needed": true,
        "help": "The units."
      },
      {
        "name": "outline",
        "kind": "part",
        "part": "outline",
        "needed": true,
        "help": "The outer walls."
      },
      {
        "name": "interior_walls",
        "kind": "part",
        "list": true,
        "part": "interior_wall",
        "help": "Interior walls."
      },
      {
        "name": "heights",
        "kind": "part",
        "part": "heights",
        "needed": true,
        "help": "How high the walls are."
      },
      {
        "name": "openings",
        "kind": "part",
        "list": true,
        "part": "opening",
        "help": "Doors, windows and other openings."
      },
      {
        "name": "control_joints",
        "kind": "part",
        "part": "control_joints",
        "help": "Control joints."
      },
      {
        "name": "steel",
        "kind": "part",
        "part": "steel",
        "help": "Steel."
      },
      {
        "name": "top",
        "kind": "part",
        "part": "top",
        "help": "Plate, anchor bolts and trusses, as asked for by the drawings."
      },
      {
        "name": "order",
        "kind": "part",
        "part": "ordering",
        "help": "What is assumed of the order, and what things cost."
      },
      {
        "name": "days",
        "kind": "part",
        "part": "days",
        "help": "Who lays, how fast, on which days."
      },
      {
        "name": "setting_out",
        "kind": "part",
        "part": "setting_out",
        "help": "What the setting-out card needs."
      },
      {
        "name": "ground",
        "kind": "part",
        "part": "ground",
        "help": "How well things are measured, and what the first course may do."
      },
      {
        "name": "readings",
        "kind": "part",
        "list": true,
        "part": "reading",
        "help": "What was measured on site, in order. Entries are never changed or taken out: a wrong one is struck by a later one."
      },
      {
        "name": "laying",
        "kind": "part",
        "part": "laying",
        "help": "How the wall is laid and judged."
      },
      {
        "name": "laid",
        "kind": "part",
        "list": true,
        "part": "laid_entry",
        "help": "What happened at the wall: entries are never changed or taken out, a wrong one is struck by another one."
      }
    ]
  },
  "units": {
    "help": "The units: series, what the yard stocks, joints and cuts.",
    "one": [],
    "fields": [
      {
        "name": "series",
        "kind": "text",
        "needed": true,
        "help": "The job's series: an id of the catalogue or of own_series."
      },
      {
        "name": "own_series",
        "kind": "part",
        "list": true,
        "part": "own_series",
        "help": "Series of your own."
      },
      {
        "name": "stocked",
        "kind": "choice",
        "list": true,
        "choices": [
          "full",
          "half",
          "corner",
          "corner-set",
          "open-end",
          "open-both",
          "bond-beam",
          "bond-beam-half",
          "lintel",
          "lintel-half",
          "sash",
          "sash-half",
          "cleanout",
          "cleanout-half",
          "half-high",
          "half-high-half",
          "solid"
        ],
        "help": "Kinds of units that the yard stocks; absent: every kind that the series is made in."
      },
      {
        "name": "joint_least",
        "kind": "length",
        "help": "Least width of a head joint, a length."
      },
      {
        "name": "joint_most",
        "kind": "length",
        "help": "Greatest width of a head joint, a length."
      },
      {
        "name": "least_piece",
        "kind": "length",
        "help": "Least length of a cut piece, a length."
      },
      {
        "name": "cuts",
        "kind": "length",
        "list": true,
        "help": "Lengths that the saw cuts, actual; absent: a quarter and three quarters of a unit."
      },
      {
        "name": "bond",
        "kind": "choice",
        "choices": [
          "half",
          "quarter"
        ],
        "help": "Bond wished for; absent: half."
      },
      {
        "name": "breakage",
        "kind": "whole",
        "help": "Units to order for breakage, in hundredths of what is laid and sawn; absent: 5."
      }
    ]
  },
  "own_series": {
    "help": "A series of units of your own, as measured on one unit. All lengths are actual.",
    "one": [],
    "fields": [
      {
        "name": "id",
        "kind": "text",
        "needed": true,
        "help": "Short name by which the job calls this series."
      },
      {
        "name": "title",
        "kind": "text",
        "help": "Title for the sheets."
      },
      {
        "name": "full",
        "kind": "length",
        "needed": true,
        "help": "Face length of a whole unit, a length."
      },
      {
        "name": "half",
        "kind": "length",
        "needed": true,
        "help": "Face length of a half unit, a length: full + joint must be 2 (half + joint)."
      },
      {
        "name": "thickness",
        "kind": "length",
        "needed": true,
        "help": "Thickness through the wall, a length."
      },
      {
        "name": "height",
        "kind": "length",
        "needed": true,
        "help": "Height of a unit, a length."
      },
      {
        "name": "half_high",
        "kind": "length",
        "help": "Height of a half-high unit, a length."
      },
      {
        "name": "joint",
        "kind": "length",
        "needed": true,
        "help": "Width of the mortar joint, a length."
      },
      {
        "name": "joint_tolerance",
        "kind": "length",
        "help": "How far a joint may differ from its width, a length."
      },
      {
        "name": "least_piece",
        "kind": "length",
        "help": "Least length of a cut piece, a length."
      },
      {
        "name": "short_lap_margin",
        "kind": "length",
        "help": "How much less than half a unit and a joint a lap may be before it counts as short, a length."
      },
      {
        "name": "cut_step",
        "kind": "length",
        "help": "Step to which a make-up piece is cut, a length."
      },
      {
        "name": "face_shell",
        "kind": "length",
        "help": "Thickness of a face shell, a length."
      },
      {
        "name": "full_cells",
        "kind": "part",
        "list": true,
        "part": "cell",
        "help": "Cells of a whole unit, from its left end; none: no bars stand in it."
      },
      {
        "name": "half_cells",
        "kind": "part",
        "list": true,
        "part": "cell",
        "help": "Cells of a half unit, from its left end; none: no bars stand in it."
      },
      {
        "name": "corner_leg",
        "kind": "length",
        "help": "Short leg of a corner set, a length; absent: plain units make the corner."
      },
      {
        "name": "made",
        "kind": "choice",
        "list": true,
        "choices": [
          "full",
          "half",
          "corner",
          "corner-set",
          "open-end",
          "open-both",
          "bond-beam",
          "bond-beam-half",
          "lintel",
          "lintel-half",
          "sash",
          "sash-half",
          "cleanout",
          "cleanout-half",
          "half-high",
          "half-high-half",
          "solid"
        ],
        "help": "Kinds that this series is made in; none: full, half, corner."
      }
    ]
  },
  "cell": {
    "help": "One cell of a unit: the clear interval between two webs.",
    "one": [],
    "fields": [
      {
        "name": "from",
        "kind": "length",
        "needed": true,
        "help": "Length from the unit's left end to the cell's near web face."
      },
      {
        "name": "to",
        "kind": "length",
        "needed": true,
        "help": "Length from the unit's left end to the cell's far web face."
      }
    ]
  },
  "outline": {
    "help": "The outer walls, walked in order.",
    "one": [],
    "fields": [
      {
        "name": "closed",
        "kind": "truth",
        "help": "True when the last side ends where the first starts."
      },
      {
        "name": "building_on",
        "kind": "choice",
        "choices": [
          "right",
          "left"
        ],
        "help": "Open outlines: the hand that the building lies on; absent: right."
      },
      {
        "name": "sides",
        "kind": "part",
        "list": true,
        "part": "side",
        "needed": true,
        "help": "The sides, in the order in which they are walked."
      }
    ]
  },
  "side": {
    "help": "One straight side of the outline, from corner to corner along its outer face.",
    "one": [],
    "fields": [
      {
        "name": "name",
        "kind": "text",
        "help": "Name of the side; absent: its two corners' names in one, as AB."
      },
      {
        "name": "from",
        "kind": "text",
        "needed": true,
        "help": "Corner that it starts at."
      },
      {
        "name": "to",
        "kind": "text",
        "needed": true,
        "help": "Corner that it ends at."
      },
      {
        "name": "length",
        "kind": "length",
        "needed": true,
        "help": "Length from corner to corner, a length."
      },
      {
        "name": "turn",
        "kind": "choice",
        "choices": [
          "right",
          "left"
        ],
        "help": "Turn at its far corner; absent on the last side of an open outline."
      },
      {
        "name": "series",
        "kind": "text",
        "help": "Series of this wall; absent: the job's."
      }
    ]
  },
  "interior_wall": {
    "help": "An interior wall, square off one wall, to the next that it meets.",
    "one": [],
    "fields": [
      {
        "name": "name",
        "kind": "text",
        "needed": true,
        "help": "Name of the wall."
      },
      {
        "name": "off",
        "kind": "text",
        "needed": true,
        "help": "The wall that it starts from."
      },
      {
        "name": "place",
        "kind": "part",
        "part": "place",
        "needed": true,
        "help": "Where on that wall it starts."
      },
      {
        "name": "length",
        "kind": "length",
        "help": "Clear length, a length; absent: to the first wall that it meets."
      },
      {
        "name": "start_junction",
        "kind": "choice",
        "choices": [
          "tied",
          "control-joint",
          "lapped"
        ],
        "help": "How its start joins the wall that it starts from; absent: tied."
      },
      {
        "name": "end_junction",
        "kind": "choice",
        "choices": [
          "tied",
          "control-joint",
          "lapped"
        ],
        "help": "How its end joins the wall that it meets; absent: tied."
      },
      {
        "name": "series",
        "kind": "text",
        "help": "Series of this wall; absent: the job's."
      }
    ]
  },
  "place": {
    "help": "A place on a wall: so far from that corner, to that face.",
    "one": [],
    "fields": [
      {
        "name": "from",
        "kind": "text",
        "needed": true,
        "help": "The corner measured from; on an interior wall \"start\" or \"end\"."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Distance from that corner, a length."
      },
      {
        "name": "to",
        "kind": "choice",
        "choices": [
          "near",
          "far"
        ],
        "help": "The edge measured to: the one nearer to that corner or farther from it; absent: near."
      }
    ]
  },
  "heights": {
    "help": "How high the walls are: courses or a height.",
    "one": [
      "courses",
      "height"
    ],
    "fields": [
      {
        "name": "courses",
        "kind": "whole",
        "instead": [
          "height"
        ],
        "help": "Number of courses."
      },
      {
        "name": "height",
        "kind": "length",
        "instead": [
          "courses"
        ],
        "help": "Height from the underside of the first bed joint, a length; off the courses, the nearest whole one is built."
      },
      {
        "name": "half_high",
        "kind": "choice",
        "choices": [
          "first",
          "under-head",
          "top"
        ],
        "help": "Where a half-high course goes, if the height asks for one."
      },
      {
        "name": "half_high_courses",
        "kind": "whole",
        "list": true,
        "help": "Courses that are half-high."
      }
    ]
  },
  "opening": {
    "help": "An opening in a wall: exactly one of masonry, door, overhead, window.",
    "one": [
      "masonry",
      "door",
      "overhead",
      "window"
    ],
    "fields": [
      {
        "name": "name",
        "kind": "text",
        "needed": true,
        "help": "Name of the opening, such as D1."
      },
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall that it is in."
      },
      {
        "name": "place",
        "kind": "part",
        "part": "place",
        "needed": true,
        "help": "Where on that wall, to which edge of the masonry opening."
      },
      {
        "name": "masonry",
        "kind": "part",
        "part": "masonry",
        "instead": [
          "door",
          "overhead",
          "window"
        ],
        "help": "The size of the hole in the masonry."
      },
      {
        "name": "door",
        "kind": "part",
        "part": "door",
        "instead": [
          "masonry",
          "overhead",
          "window"
        ],
        "help": "A door."
      },
      {
        "name": "overhead",
        "kind": "part",
        "part": "overhead",
        "instead": [
          "masonry",
          "door",
          "window"
        ],
        "help": "An overhead door."
      },
      {
        "name": "window",
        "kind": "part",
        "part": "window",
        "instead": [
          "masonry",
          "door",
          "overhead"
        ],
        "help": "A window."
      },
      {
        "name": "floor",
        "kind": "length",
        "help": "Doors: height of the floor from the top of course 1, a length, minus below it; absent: one joint under course 1."
      },
      {
        "name": "sill",
        "kind": "length",
        "instead": [
          "sill_course"
        ],
        "help": "Windows: height of the sill from the top of course 1, a length, minus below it."
      },
      {
        "name": "sill_course",
        "kind": "whole",
        "instead": [
          "sill"
        ],
        "help": "Windows: the course whose top is the sill."
      },
      {
        "name": "lintel",
        "kind": "part",
        "part": "lintel",
        "help": "The lintel."
      },
      {
        "name": "note",
        "kind": "text",
        "long": true,
        "help": "A note for the sheets."
      }
    ]
  },
  "masonry": {
    "help": "The hole in the masonry as such.",
    "one": [],
    "fields": [
      {
        "name": "width",
        "kind": "length",
        "needed": true,
        "help": "Width of the hole, a length."
      },
      {
        "name": "height",
        "kind": "length",
        "needed": true,
        "help": "Height of the hole, a length."
      }
    ]
  },
  "door": {
    "help": "A door: leaf, frame, buck and shim, all actual. The hole is the leaf and twice frame, buck and shim wide.",
    "one": [],
    "fields": [
      {
        "name": "leaf_width",
        "kind": "length",
        "needed": true,
        "help": "Width of the leaf, a length."
      },
      {
        "name": "leaf_height",
        "kind": "length",
        "needed": true,
        "help": "Height of the leaf, a length."
      },
      {
        "name": "frame_jamb",
        "kind": "length",
        "help": "Face of the frame at a jamb, a length; absent: 0."
      },
      {
        "name": "frame_head",
        "kind": "length",
        "help": "Face of the frame at the head, a length; absent: 0."
      },
      {
        "name": "buck",
        "kind": "length",
        "help": "Thickness of the buck, a length; absent: 0."
      },
      {
        "name": "shim",
        "kind": "length",
        "help": "Room for shims at each side, a length; absent: 0."
      }
    ]
  },
  "overhead": {
    "help": "An overhead door: leaf, bucks, and the room that it needs inside, all actual.",
    "one": [],
    "fields": [
      {
        "name": "leaf_width",
        "kind": "length",
        "needed": true,
        "help": "Width of the leaf, a length."
      },
      {
        "name": "leaf_height",
        "kind": "length",
        "needed": true,
        "help": "Height of the leaf, a length."
      },
      {
        "name": "jamb_buck",
        "kind": "length",
        "help": "Thickness of the buck at each jamb, a length; absent: 0."
      },
      {
        "name": "head_buck",
        "kind": "length",
        "help": "Thickness of the buck at the head, a length; absent: 0."
      },
      {
        "name": "side_room",
        "kind": "length",
        "help": "Room needed beside the opening inside, a length; absent: not checked."
      },
      {
        "name": "head_room",
        "kind": "length",
        "help": "Room needed above the opening inside, a length; absent: not checked."
      }
    ]
  },
  "window": {
    "help": "A window unit and what is allowed round it, all actual.",
    "one": [],
    "fields": [
      {
        "name": "width",
        "kind": "length",
        "needed": true,
        "help": "Width of the window unit, a length."
      },
      {
        "name": "height",
        "kind": "length",
        "needed": true,
        "help": "Height of the window unit, a length."
      },
      {
        "name": "each_side",
        "kind": "length",
        "help": "Room at each side, a length; absent: 0."
      },
      {
        "name": "above",
        "kind": "length",
        "help": "Room above, a length; absent: 0."
      },
      {
        "name": "below",
        "kind": "length",
        "help": "Room below, for the sill, a length; absent: 0."
      }
    ]
  },
  "lintel": {
    "help": "The lintel over an opening, as asked for by the drawings.",
    "one": [],
    "fields": [
      {
        "name": "make",
        "kind": "choice",
        "choices": [
          "one-piece",
          "built-up"
        ],
        "help": "One piece, or built up of lintel or bond-beam units."
      },
      {
        "name": "courses",
        "kind": "whole",
        "help": "How many courses it is deep; absent: 1."
      },
      {
        "name": "bearing",
        "kind": "length",
        "help": "Least bearing at each end, actual, a length; absent: one half unit."
      },
      {
        "name": "shore_spacing",
        "kind": "length",
        "help": "Built up: greatest distance from shore to shore under it, as your drawings or the shores' maker say, a length; absent: not said."
      },
      {
        "name": "piece",
        "kind": "choice",
        "choices": [
          "precast",
          "steel-section"
        ],
        "help": "One piece: precast concrete, or a steel section as high as its courses; absent: not said."
      },
      {
        "name": "mark",
        "kind": "text",
        "help": "What your drawings call it, such as L1."
      },
      {
        "name": "weight",
        "kind": "text",
        "help": "One piece: its weight as its maker says it, in your own words."
      }
    ]
  },
  "control_joints": {
    "help": "Control joints: by a rule, and placed ones.",
    "one": [],
    "fields": [
      {
        "name": "rule",
        "kind": "choice",
        "choices": [
          "none",
          "us",
          "uk"
        ],
        "help": "The rule that places them; absent: none."
      },
      {
        "name": "placed",
        "kind": "part",
        "list": true,
        "part": "placed_control_joint",
        "help": "Control joints with places of their own."
      }
    ]
  },
  "placed_control_joint": {
    "help": "A control joint with a place of its own.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall that it is in."
      },
      {
        "name": "place",
        "kind": "part",
        "part": "place",
        "needed": true,
        "help": "Where on that wall, to which edge of the joint."
      }
    ]
  },
  "steel": {
    "help": "Steel asked for by the drawings, and where grout pours stop.",
    "one": [],
    "fields": [
      {
        "name": "bars",
        "kind": "part",
        "part": "bars",
        "help": "Upright bars; absent: none."
      },
      {
        "name": "bond_beams",
        "kind": "whole",
        "list": true,
        "help": "Courses that are bond beams."
      },
      {
        "name": "wire_every",
        "kind": "whole",
        "help": "Joint reinforcement in the bed on top of every so many courses, not on the last; absent: none."
      },
      {
        "name": "wire_stock",
        "kind": "length",
        "help": "Length that joint reinforcement is sold in, a length; absent: 10 ft, or 3 m."
      },
      {
        "name": "wire_lap",
        "kind": "length",
        "help": "How far joint reinforcement laps, as your drawings ask, a length; absent: 6 in, or 150 mm."
      },
      {
        "name": "wire_leg",
        "kind": "length",
        "help": "Leg of a corner of joint reinforcement, along the outer face, a length; absent: 24 in, or 600 mm."
      },
      {
        "name": "wire_corners",
        "kind": "choice",
        "choices": [
          "pieces",
          "bent"
        ],
        "help": "Whether corners of joint reinforcement are bought as such or bent from straight stock; absent: pieces."
      },
      {
        "name": "wire_tees",
        "kind": "choice",
        "choices": [
          "tees",
          "none"
        ],
        "help": "Whether joint reinforcement is tied to that of inner walls, tied or lapped, by pieces bought as tees, or stops; absent: tees."
      },
      {
        "name": "tie_every",
        "kind": "whole",
        "help": "Ties where an inner wall is butted and tied, in the bed on top of every so many courses as your drawings ask, not on the last; absent: not said."
      },
      {
        "name": "beam_steel_in_joints",
        "kind": "truth",
        "help": "Horizontal steel of at least 0.002 of the net area runs through, so that no control joints are needed."
      },
      {
        "name": "pour_tops",
        "kind": "whole",
        "list": true,
        "help": "Courses at whose top a grout pour stops, rising; none: not said."
      },
      {
        "name": "dowel_lap",
        "kind": "length",
        "help": "How far dowels stand up over the footing or slab, as your drawings ask, a length."
      },
      {
        "name": "kept_dowels",
        "kind": "text",
        "list": true,
        "help": "Ids of dowel readings whose bars stand where the dowels were found, whatever that costs the bond."
      },
      {
        "name": "lap",
        "kind": "part",
        "part": "lap",
        "help": "How far bars lap; absent: no rule is picked."
      },
      {
        "name": "bar_stock",
        "kind": "length",
        "help": "Length of the longest bars that your yard sells, a length; absent: 20 ft, or 6 m."
      },
      {
        "name": "bar_kerf",
        "kind": "length",
        "help": "What a saw's or shear's cut takes of a bar, a length; absent: 1/8 in, or 3 mm."
      },
      {
        "name": "end_cover",
        "kind": "length",
        "help": "How far bars end from the end or the top of the masonry, a length; absent: 1 1/2 in, or 40 mm."
      },
      {
        "name": "beam_bars",
        "kind": "part",
        "part": "beam_bars",
        "help": "Bars along bond beams; absent: as your drawings say."
      },
      {
        "name": "lintel_bars",
        "kind": "part",
        "part": "lintel_bars",
        "help": "Bars along lintels built of units; absent: as your drawings say."
      }
    ]
  },
  "bars": {
    "help": "Upright bars, as asked for by the drawings.",
    "one": [],
    "fields": [
      {
        "name": "size",
        "kind": "text",
        "needed": true,
        "help": "Size of the bars as the catalogue names it, such as #5 or N12."
      },
      {
        "name": "grout",
        "kind": "choice",
        "choices": [
          "fine",
          "coarse"
        ],
        "help": "Grout of the cells; absent: coarse."
      },
      {
        "name": "corners",
        "kind": "truth",
        "help": "A bar in every corner; absent: false."
      },
      {
        "name": "jambs",
        "kind": "truth",
        "help": "A bar at every jamb; absent: false."
      },
      {
        "name": "control_joints",
        "kind": "truth",
        "help": "A bar at each side of every control joint; absent: false."
      },
      {
        "name": "spacing",
        "kind": "length",
        "help": "Greatest spacing of the bars along masonry, across control joints too, a length; absent: no more bars."
      },
      {
        "name": "dimensioned",
        "kind": "part",
        "list": true,
        "part": "dimensioned_bar",
        "help": "Bars with places of their own."
      }
    ]
  },
  "dimensioned_bar": {
    "help": "An upright bar with a place of its own.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall that it stands in."
      },
      {
        "name": "place",
        "kind": "part",
        "part": "place",
        "needed": true,
        "help": "Where on that wall, to the bar's centre."
      }
    ]
  },
  "lap": {
    "help": "How far bars lap, by the rule that your drawings name. The program chooses none.",
    "one": [],
    "fields": [
      {
        "name": "rule",
        "kind": "choice",
        "choices": [
          "tms-402-to-2008",
          "tms-402-from-2011",
          "ibc",
          "florida-2017",
          "40-bars",
          "48-bars",
          "as-drawn"
        ],
        "needed": true,
        "help": "The rule that gives the length."
      },
      {
        "name": "masonry",
        "kind": "text",
        "help": "Compressive strength of the masonry, f'm, such as 1500 psi or 10.3 MPa; for the TMS 402 and Florida rules."
      },
      {
        "name": "steel",
        "kind": "text",
        "help": "Yield strength of the bars, such as 60000 psi or 500 MPa; with the IBC rule the stress that the bars are used at."
      },
      {
        "name": "length",
        "kind": "length",
        "help": "With the rule as-drawn: what your drawings say, a length."
      }
    ]
  },
  "beam_bars": {
    "help": "Bars along each bond-beam course, as asked for by the drawings.",
    "one": [],
    "fields": [
      {
        "name": "size",
        "kind": "text",
        "needed": true,
        "help": "Size of the bars as the catalogue names it, such as #4 or N12."
      },
      {
        "name": "count",
        "kind": "whole",
        "needed": true,
        "help": "How many lie side by side."
      },
      {
        "name": "at_control_joints",
        "kind": "choice",
        "choices": [
          "stop",
          "pass"
        ],
        "help": "Whether they stop at control joints or pass through; absent: not said."
      }
    ]
  },
  "lintel_bars": {
    "help": "Bars along the lowest course of each lintel built of units, as asked for by the drawings.",
    "one": [],
    "fields": [
      {
        "name": "size",
        "kind": "text",
        "needed": true,
        "help": "Size of the bars as the catalogue names it, such as #5 or N16."
      },
      {
        "name": "count",
        "kind": "whole",
        "needed": true,
        "help": "How many lie side by side."
      }
    ]
  },
  "top": {
    "help": "What goes on top of the walls, as asked for by the drawings.",
    "one": [],
    "fields": [
      {
        "name": "plate",
        "kind": "text",
        "help": "The plate, in your own words."
      },
      {
        "name": "plate_on",
        "kind": "text",
        "list": true,
        "help": "Walls that carry a plate; none: every side of the outline."
      },
      {
        "name": "plate_piece",
        "kind": "length",
        "help": "Length of the plate's pieces, a length: laid from each plate's start, the last is what is left; absent: in one piece."
      },
      {
        "name": "bolts",
        "kind": "part",
        "part": "bolts",
        "help": "Anchor bolts; absent: not planned."
      },
      {
        "name": "trusses",
        "kind": "part",
        "list": true,
        "part": "trusses",
        "help": "Trusses or rafters that bolts keep clear of."
      }
    ]
  },
  "bolts": {
    "help": "Anchor bolts of the plate, as asked for by the drawings; lengths are actual, to the bolts' centres.",
    "one": [],
    "fields": [
      {
        "name": "size",
        "kind": "text",
        "help": "Size and depth of the bolts, in your own words."
      },
      {
        "name": "spacing",
        "kind": "length",
        "needed": true,
        "help": "Greatest spacing, a length."
      },
      {
        "name": "end_most",
        "kind": "length",
        "needed": true,
        "help": "Farthest that the first and last bolt of a piece of plate stand from its ends, a length."
      },
      {
        "name": "end_least",
        "kind": "length",
        "help": "Nearest that a bolt stands to an end of its piece of plate, a length; absent: 0."
      },
      {
        "name": "clear_of_bars",
        "kind": "length",
        "help": "Nearest that a bolt stands to an upright bar, along the wall, a length; absent: 0."
      },
      {
        "name": "grout_round",
        "kind": "length",
        "help": "Least from a bolt's centre to the block beside it, along the wall, a length; absent: 1 1/2 in or 38 mm."
      }
    ]
  },
  "trusses": {
    "help": "Trusses or rafters evenly along one wall, to its far end.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall that they stand on."
      },
      {
        "name": "place",
        "kind": "part",
        "part": "place",
        "needed": true,
        "help": "Where on that wall, to the first one's centre, actual; the others follow away from that corner."
      },
      {
        "name": "spacing",
        "kind": "length",
        "needed": true,
        "help": "Their spacing, a length."
      },
      {
        "name": "clear",
        "kind": "length",
        "needed": true,
        "help": "Nearest that a bolt's centre stands to a truss's centre, a length."
      }
    ]
  },
  "ordering": {
    "help": "What is assumed of the order, and what things cost.",
    "one": [],
    "fields": [
      {
        "name": "kinds",
        "kind": "part",
        "list": true,
        "part": "kind_order",
        "help": "Kinds of units with a breakage or a pallet of their own."
      },
      {
        "name": "mortar",
        "kind": "choice",
        "choices": [
          "premix",
          "masonry-cement",
          "cement-lime"
        ],
        "help": "What the mortar is mixed of; absent: premix in bags."
      },
      {
        "name": "type",
        "kind": "choice",
        "choices": [
          "m",
          "s",
          "n",
          "o"
        ],
        "help": "Type of the mortar, as the drawings ask; absent: S."
      },
      {
        "name": "mortar_by",
        "kind": "choice",
        "choices": [
          "joints",
          "litres-a-block",
          "feet-a-hundred",
          "blocks-a-bag"
        ],
        "help": "The figure that mortar is ordered by, where published ones disagree; absent: the whole range is shown."
      },
      {
        "name": "mortar_waste",
        "kind": "whole",
        "help": "Mortar spilt and left over, in hundredths of what the joints hold; absent: 10."
      },
      {
        "name": "sand_waste",
        "kind": "whole",
        "help": "Sand lost in the heap, in hundredths; absent: 10."
      },
      {
        "name": "grout_as",
        "kind": "choice",
        "choices": [
          "bags",
          "truck"
        ],
        "help": "Grout in bags or by truck; absent: bags."
      },
      {
        "name": "grout_loss",
        "kind": "whole",
        "help": "Grout ordered beyond what goes in, in hundredths; absent: 10."
      },
      {
        "name": "wire_waste",
        "kind": "whole",
        "help": "Joint reinforcement cut off and lost, in hundredths; absent: 5."
      },
      {
        "name": "lumber_waste",
        "kind": "whole",
        "help": "Lumber of bucks and plates cut off and lost, in hundredths; absent: 10."
      },
      {
        "name": "bolts_spare",
        "kind": "whole",
        "help": "Anchor bolts beyond those set, in hundredths; absent: 5."
      },
      {
        "name": "currency",
        "kind": "text",
        "help": "The one currency of all prices: three letters, as USD."
      },
      {
        "name": "decimals",
        "kind": "whole",
        "help": "Decimal places of the currency's smallest unit; absent: 2."
      },
      {
        "name": "prices",
        "kind": "part",
        "list": true,
        "part": "article_price",
        "help": "Prices of articles."
      },
      {
        "name": "tax",
        "kind": "text",
        "help": "Tax on goods, in hundredths, such as 8.25; absent: none."
      },
      {
        "name": "delivery",
        "kind": "text",
        "help": "What delivery costs, untaxed; absent: not said."
      },
      {
        "name": "brought",
        "kind": "part",
        "list": true,
        "part": "brought",
        "help": "What the yard brought so far, delivery by delivery; of articles that stand here it is forecast what runs out."
      },
      {
        "name": "weights",
        "kind": "part",
        "list": true,
        "part": "article_weight",
        "help": "What articles weigh that have no weight on their bag."
      },
      {
        "name": "truck",
        "kind": "text",
        "help": "What the yard's truck carries, such as 8000 lb or 3500 kg; absent: loads are not made up."
      }
    ]
  },
  "kind_order": {
    "help": "How one kind of unit is ordered.",
    "one": [],
    "fields": [
      {
        "name": "kind",
        "kind": "choice",
        "choices": [
          "full",
          "half",
          "corner",
          "corner-set",
          "open-end",
          "open-both",
          "bond-beam",
          "bond-beam-half",
          "lintel",
          "lintel-half",
          "sash",
          "sash-half",
          "cleanout",
          "cleanout-half",
          "half-high",
          "half-high-half",
          "solid"
        ],
        "needed": true,
        "help": "The kind of unit."
      },
      {
        "name": "breakage",
        "kind": "whole",
        "help": "Units of this kind ordered for breakage, in hundredths of what is laid and sawn; absent: as for all units."
      },
      {
        "name": "pallet",
        "kind": "whole",
        "help": "Units on one pallet or cube, where only whole ones are sold; absent: sold one by one."
      }
    ]
  },
  "article_price": {
    "help": "What one of an article costs.",
    "one": [],
    "fields": [
      {
        "name": "article",
        "kind": "text",
        "long": true,
        "needed": true,
        "help": "The article's id, as the order list has it."
      },
      {
        "name": "price",
        "kind": "text",
        "needed": true,
        "help": "The price of one, as it is sold: digits with a point before the smallest unit, such as 2.45."
      }
    ]
  },
  "brought": {
    "help": "What a delivery brought of one article.",
    "one": [],
    "fields": [
      {
        "name": "article",
        "kind": "text",
        "long": true,
        "needed": true,
        "help": "The article's id, as the order list has it."
      },
      {
        "name": "count",
        "kind": "whole",
        "needed": true,
        "help": "How many, as they are sold; broken ones left out."
      }
    ]
  },
  "article_weight": {
    "help": "What one of an article weighs.",
    "one": [],
    "fields": [
      {
        "name": "article",
        "kind": "text",
        "long": true,
        "needed": true,
        "help": "The article's id, as the order list has it."
      },
      {
        "name": "weight",
        "kind": "text",
        "needed": true,
        "help": "The weight of one, as it is sold, such as 35 lb or 16 kg."
      }
    ]
  },
  "days": {
    "help": "Who lays, how fast, on which days.",
    "one": [],
    "fields": [
      {
        "name": "crew",
        "kind": "choice",
        "choices": [
          "beginners",
          "mason"
        ],
        "help": "Who lays: pairs of beginners, or masons with a tender each; absent: beginners."
      },
      {
        "name": "pairs",
        "kind": "whole",
        "help": "How many pairs lay at the same time; absent: 1."
      },
      {
        "name": "units_per_hour",
        "kind": "whole",
        "help": "Units that each pair lays in an hour; absent: 6 for beginners, 15 for a mason."
      },
      {
        "name": "hours",
        "kind": "whole",
        "help": "Hours of a working day; absent: 8."
      },
      {
        "name": "most_courses",
        "kind": "whole",
        "help": "Courses that a wall may rise in a day; absent: so many as stay under 1.5 m."
      },
      {
        "name": "mortar_minutes",
        "kind": "whole",
        "help": "Minutes from mixing in which a batch is used up; absent: 150."
      },
      {
        "name": "work",
        "kind": "part",
        "list": true,
        "part": "work_days",
        "help": "Work and waits that last otherwise than assumed."
      },
      {
        "name": "start",
        "kind": "text",
        "help": "Date of the first working day, year-month-day as 2027-05-03; absent: days are only numbered."
      },
      {
        "name": "log_until",
        "kind": "text",
        "help": "Date up to whose evening the laid log tells of all that was done: the rest is planned from the day after; absent: the day of the log's newest entry."
      },
      {
        "name": "weekdays",
        "kind": "choice",
        "list": true,
        "choices": [
          "monday",
          "tuesday",
          "wednesday",
          "thursday",
          "friday",
          "saturday",
          "sunday"
        ],
        "help": "Days of the week that are worked; none: Monday to Friday."
      },
      {
        "name": "days_off",
        "kind": "text",
        "list": true,
        "help": "Dates on which nobody works, as 2027-05-31."
      },
      {
        "name": "finish_by",
        "kind": "text",
        "help": "Date by which it is to be done, as 2027-07-02: the chance of that is worked out; needs the first day."
      },
      {
        "name": "forecast",
        "kind": "part",
        "list": true,
        "part": "day_forecast",
        "help": "The weather expected, day by day: what rules for cold, heat and wind ask then is said first."
      },
      {
        "name": "spread",
        "kind": "whole",
        "help": "How far one piece of work may take more or less time than planned: a standard deviation in hundredths; absent: as the laid log tells, else 25."
      },
      {
        "name": "pace_doubt",
        "kind": "whole",
        "help": "How far the pace itself may be off for the whole job: a standard deviation in hundredths; absent: as the laid log tells, else 30."
      }
    ]
  },
  "work_days": {
    "help": "How long one piece of work takes, or a wait lasts.",
    "one": [],
    "fields": [
      {
        "name": "work",
        "kind": "choice",
        "choices": [
          "boards",
          "footing",
          "footing-cure",
          "strike-lines",
          "leads",
          "course",
          "lintels",
          "masonry-cure",
          "grout-lift",
          "grout-cure",
          "bolts"
        ],
        "needed": true,
        "help": "The work, or the wait; a course's time is its units'."
      },
      {
        "name": "half_days",
        "kind": "whole",
        "needed": true,
        "help": "How long, in half days."
      }
    ]
  },
  "day_forecast": {
    "help": "The weather that is expected on one day.",
    "one": [],
    "fields": [
      {
        "name": "date",
        "kind": "text",
        "needed": true,
        "help": "The day, as 2027-05-03."
      },
      {
        "name": "coldest",
        "kind": "whole",
        "help": "Coldest, in degrees Fahrenheit with a tape in inches, else Celsius."
      },
      {
        "name": "warmest",
        "kind": "whole",
        "help": "Warmest, likewise."
      },
      {
        "name": "wind",
        "kind": "whole",
        "help": "Steady wind, in miles an hour with a tape in inches, else kilometres an hour."
      },
      {
        "name": "gusts",
        "kind": "whole",
        "help": "Gusts, likewise."
      }
    ]
  },
  "setting_out": {
    "help": "What the setting-out card needs: boards, footing, the lot's room, the line.",
    "one": [],
    "fields": [
      {
        "name": "boards_off",
        "kind": "length",
        "help": "How far beyond the outer faces the batter boards stand, a length; absent: 4 ft or 1200 mm."
      },
      {
        "name": "first_kerf",
        "kind": "length",
        "help": "From a board's outer end to the outer face line, a length; absent: 2 ft or 600 mm."
      },
      {
        "name": "footing_outside",
        "kind": "length",
        "help": "How far the footing reaches beyond the outer face, a length."
      },
      {
        "name": "footing_inside",
        "kind": "length",
        "help": "How far the footing reaches beyond the inner face, a length."
      },
      {
        "name": "room",
        "kind": "length",
        "help": "Longest leg of the square check that the lot has room for, a length; absent: the sides."
      },
      {
        "name": "datum_over",
        "kind": "length",
        "help": "Height of the benchmark over the datum (the top of course 1), a length, minus below it; absent: 0."
      },
      {
        "name": "backsight",
        "kind": "length",
        "help": "What the levelling rod reads on the benchmark, a length; absent: no rod readings on the card."
      },
      {
        "name": "boards_over",
        "kind": "length",
        "help": "Height of the boards' tops over the footing or slab, a length; absent: not listed."
      },
      {
        "name": "line_weight",
        "kind": "text",
        "help": "Weight of the mason's line: lb/ft, g/m or N/m, such as 0.001 lb/ft."
      },
      {
        "name": "line_pull",
        "kind": "text",
        "help": "How hard the line is pulled: lb, N or kg, such as 20 lb."
      },
      {
        "name": "line_strength",
        "kind": "text",
        "help": "The pull that breaks the line: lb, N or kg."
      },
      {
        "name": "line_sag",
        "kind": "length",
        "help": "Greatest sag of the line between its supports, a length; absent: 1/32 in or 1 mm."
      }
    ]
  },
  "ground": {
    "help": "How well things are measured, and what the first course may do.",
    "one": [],
    "fields": [
      {
        "name": "tape",
        "kind": "choice",
        "choices": [
          "steel",
          "class-two"
        ],
        "help": "The table of permitted errors that the tape keeps; absent: steel."
      },
      {
        "name": "tape_reading",
        "kind": "length",
        "help": "How far a taping may be read wrong, either way, a length; absent: 1/16 in or 1 mm."
      },
      {
        "name": "rod_reading",
        "kind": "length",
        "help": "How far a rod or water level may be read wrong, either way, a length; absent: 1/16 in or 1 mm."
      },
      {
        "name": "hold",
        "kind": "text",
        "help": "The corner whose peg stays where it is; absent: the first."
      },
      {
        "name": "first_course_grouted",
        "kind": "truth",
        "help": "True when the whole first course is grouted and stands on concrete: its bed may then be thicker."
      },
      {
        "name": "bed_remedy",
        "kind": "part",
        "part": "bed_remedy",
        "help": "What is done because the first bed does not fit; grout-first-course lets its bed be thicker."
      },
      {
        "name": "shape_remedy",
        "kind": "part",
        "part": "shape_remedy",
        "help": "What is done because corners stand off their places."
      }
    ]
  },
  "bed_remedy": {
    "help": "What is done because the first bed does not fit.",
    "one": [],
    "fields": [
      {
        "name": "do",
        "kind": "choice",
        "choices": [
          "level",
          "grout-first-course",
          "tilt-course",
          "grind",
          "rip-units",
          "levelling-strip",
          "half-high",
          "step",
          "curb"
        ],
        "needed": true,
        "help": "The remedy."
      },
      {
        "name": "after",
        "kind": "text",
        "help": "The id of the last reading that it was chosen on; absent: what is read later is not held against it."
      }
    ]
  },
  "shape_remedy": {
    "help": "What is done because corners stand off their places.",
    "one": [],
    "fields": [
      {
        "name": "do",
        "kind": "choice",
        "choices": [
          "move-pegs",
          "square-lines"
        ],
        "needed": true,
        "help": "The remedy."
      },
      {
        "name": "after",
        "kind": "text",
        "help": "The id of the last reading that it was chosen on; absent: what is read later is not held against it."
      }
    ]
  },
  "reading": {
    "help": "One entry of the log: exactly one of tape, rod, two_peg, dowel, edge, strike.",
    "one": [
      "tape",
      "rod",
      "two_peg",
      "dowel",
      "edge",
      "strike"
    ],
    "fields": [
      {
        "name": "id",
        "kind": "text",
        "needed": true,
        "help": "A name that no other entry has."
      },
      {
        "name": "when",
        "kind": "text",
        "help": "When, as text."
      },
      {
        "name": "by",
        "kind": "text",
        "help": "Who, as initials."
      },
      {
        "name": "tape",
        "kind": "part",
        "part": "tape_reading",
        "instead": [
          "rod",
          "two_peg",
          "dowel",
          "edge",
          "strike"
        ],
        "help": "A taped distance."
      },
      {
        "name": "rod",
        "kind": "part",
        "part": "rod_reading",
        "instead": [
          "tape",
          "two_peg",
          "dowel",
          "edge",
          "strike"
        ],
        "help": "A reading of a rod or water level."
      },
      {
        "name": "two_peg",
        "kind": "part",
        "part": "two_peg_reading",
        "instead": [
          "tape",
          "rod",
          "dowel",
          "edge",
          "strike"
        ],
        "help": "A two-peg test of the instrument."
      },
      {
        "name": "dowel",
        "kind": "part",
        "part": "dowel_reading",
        "instead": [
          "tape",
          "rod",
          "two_peg",
          "edge",
          "strike"
        ],
        "help": "A dowel as found."
      },
      {
        "name": "edge",
        "kind": "part",
        "part": "edge_reading",
        "instead": [
          "tape",
          "rod",
          "two_peg",
          "dowel",
          "strike"
        ],
        "help": "An edge of what was poured."
      },
      {
        "name": "strike",
        "kind": "text",
        "instead": [
          "tape",
          "rod",
          "two_peg",
          "dowel",
          "edge"
        ],
        "help": "The id of an entry that no longer counts. If that is a strike, what it struck counts again."
      },
      {
        "name": "note",
        "kind": "text",
        "long": true,
        "help": "A note."
      }
    ]
  },
  "tape_reading": {
    "help": "A taped distance between the outer corner points of two corners.",
    "one": [],
    "fields": [
      {
        "name": "from",
        "kind": "text",
        "needed": true,
        "help": "One corner."
      },
      {
        "name": "to",
        "kind": "text",
        "needed": true,
        "help": "The other corner."
      },
      {
        "name": "length",
        "kind": "length",
        "needed": true,
        "help": "What the tape read, a length."
      },
      {
        "name": "of",
        "kind": "choice",
        "choices": [
          "lines",
          "poured"
        ],
        "help": "The lines before the pour, or what was poured, beside which readings of lines no longer count; absent: both."
      }
    ]
  },
  "rod_reading": {
    "help": "A reading of a levelling rod or a water level.",
    "one": [],
    "fields": [
      {
        "name": "setup",
        "kind": "text",
        "needed": true,
        "help": "A name for where the instrument stood."
      },
      {
        "name": "station",
        "kind": "text",
        "needed": true,
        "help": "The point: a corner's name, or a name of its own; \"datum\" is the benchmark, of height zero."
      },
      {
        "name": "rod",
        "kind": "length",
        "needed": true,
        "help": "What the rod read, a length; minus where it was held upside down."
      },
      {
        "name": "on",
        "kind": "text",
        "help": "The wall that the point lies on."
      },
      {
        "name": "from",
        "kind": "text",
        "help": "The corner measured from; absent: the wall's start."
      },
      {
        "name": "at",
        "kind": "length",
        "help": "Distance from that corner along the wall, a length."
      },
      {
        "name": "surface",
        "kind": "choice",
        "choices": [
          "bearing",
          "floor",
          "other",
          "top"
        ],
        "help": "What the rod stood on; absent: bearing, the top of the footing or slab."
      },
      {
        "name": "sight",
        "kind": "length",
        "help": "How far the rod stood from the instrument, a length; after a two-peg test the reading is corrected by it."
      }
    ]
  },
  "two_peg_reading": {
    "help": "A two-peg test: pegs A and B read from midway, then from close to A.",
    "one": [],
    "fields": [
      {
        "name": "midway_a",
        "kind": "length",
        "needed": true,
        "help": "Rod on A, from midway, a length."
      },
      {
        "name": "midway_b",
        "kind": "length",
        "needed": true,
        "help": "Rod on B, from midway, a length."
      },
      {
        "name": "close_a",
        "kind": "length",
        "needed": true,
        "help": "Rod on A, from close to it, a length."
      },
      {
        "name": "close_b",
        "kind": "length",
        "needed": true,
        "help": "Rod on B, from close to A, a length."
      },
      {
        "name": "sight_a",
        "kind": "length",
        "needed": true,
        "help": "From close to A: distance to A, a length."
      },
      {
        "name": "sight_b",
        "kind": "length",
        "needed": true,
        "help": "From close to A: distance to B, a length."
      }
    ]
  },
  "dowel_reading": {
    "help": "Where an upright dowel was found, to its centre.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall that it belongs to."
      },
      {
        "name": "from",
        "kind": "text",
        "help": "The corner measured from; absent: the wall's start."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Distance from that corner's outer face, a length."
      },
      {
        "name": "off_face",
        "kind": "length",
        "needed": true,
        "help": "Distance in from the wall's outer face as planned, a length, minus outside it."
      }
    ]
  },
  "edge_reading": {
    "help": "How far the edge of what was poured reaches beyond the outer face line.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall whose outer face line is meant."
      },
      {
        "name": "from",
        "kind": "text",
        "help": "The corner measured from; absent: the wall's start."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Distance from that corner along the line, a length."
      },
      {
        "name": "beyond",
        "kind": "length",
        "needed": true,
        "help": "How far beyond the line, a length, minus short of it."
      }
    ]
  },
  "laying": {
    "help": "How the wall is laid and judged.",
    "one": [],
    "fields": [
      {
        "name": "rules",
        "kind": "choice",
        "choices": [
          "us",
          "uk"
        ],
        "help": "Whose limits a wall is judged by; absent: us with an inch tape, uk with millimetres."
      },
      {
        "name": "joint_least",
        "kind": "length",
        "help": "Narrowest head joint that a correction may ask for, a length; absent: 1/4 in or 7 mm."
      },
      {
        "name": "joint_most",
        "kind": "length",
        "help": "Widest head joint that a correction may ask for, a length; absent: 1/2 in or 13 mm."
      },
      {
        "name": "beyond_working",
        "kind": "truth",
        "help": "True when corrections may leave that range, never the tolerance of 1/8 to 3/4 in."
      },
      {
        "name": "mark_reading",
        "kind": "length",
        "help": "How far a block end may be read wrong at a mark, either way, a length; absent: 1/32 in or 1 mm."
      },
      {
        "name": "unit_spread",
        "kind": "length",
        "help": "Standard deviation of one unit's length, a length; absent: 1/24 in, unverified."
      },
      {
        "name": "joint_spread",
        "kind": "length",
        "help": "Standard deviation of one joint's width, a length; absent: 1/16 in, unverified."
      }
    ]
  },
  "laid_entry": {
    "help": "One entry of the laid log: exactly one of mark, units, laid, gauge, set, gap, check, found, remark, grouted, looked_at, strike.",
    "one": [
      "mark",
      "units",
      "laid",
      "gauge",
      "set",
      "gap",
      "check",
      "found",
      "remark",
      "grouted",
      "looked_at",
      "strike"
    ],
    "fields": [
      {
        "name": "id",
        "kind": "text",
        "needed": true,
        "help": "A name that no other entry has."
      },
      {
        "name": "when",
        "kind": "text",
        "help": "When, as text; 2026-05-09 14:20 tells the pace too."
      },
      {
        "name": "by",
        "kind": "text",
        "help": "Who, as initials."
      },
      {
        "name": "mark",
        "kind": "part",
        "part": "mark_reading",
        "instead": [
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "A block end at its mark."
      },
      {
        "name": "units",
        "kind": "part",
        "part": "unit_sample",
        "instead": [
          "mark",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "Units of the batch, measured."
      },
      {
        "name": "laid",
        "kind": "part",
        "part": "course_laid",
        "instead": [
          "mark",
          "units",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "A course laid from end to end."
      },
      {
        "name": "gauge",
        "kind": "part",
        "part": "gauge_reading",
        "instead": [
          "mark",
          "units",
          "laid",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "The top of a course against the gauge rod (story pole)."
      },
      {
        "name": "set",
        "kind": "part",
        "part": "unit_setting",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "One unit set, read at its corners."
      },
      {
        "name": "gap",
        "kind": "part",
        "part": "gap_reading",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "The gap for a closure."
      },
      {
        "name": "check",
        "kind": "part",
        "part": "wall_check",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "found",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "A finished part of a wall or a joint checked."
      },
      {
        "name": "found",
        "kind": "part",
        "part": "found_place",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "remark",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "A jamb or corner as found."
      },
      {
        "name": "remark",
        "kind": "part",
        "part": "remark",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "grouted",
          "looked_at",
          "strike"
        ],
        "help": "What its note or photos tell of."
      },
      {
        "name": "grouted",
        "kind": "part",
        "part": "grouted",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "looked_at",
          "strike"
        ],
        "help": "A cell or trough filled, or consolidated again."
      },
      {
        "name": "looked_at",
        "kind": "part",
        "part": "looked_at",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "strike"
        ],
        "help": "A line of the inspection list, right."
      },
      {
        "name": "strike",
        "kind": "text",
        "instead": [
          "mark",
          "units",
          "laid",
          "gauge",
          "set",
          "gap",
          "check",
          "found",
          "remark",
          "grouted",
          "looked_at"
        ],
        "help": "The id of an entry that no longer counts. If that is a strike, what it struck counts again."
      },
      {
        "name": "photos",
        "kind": "text",
        "list": true,
        "help": "Names of photo files."
      },
      {
        "name": "note",
        "kind": "text",
        "long": true,
        "help": "A note."
      }
    ]
  },
  "mark_reading": {
    "help": "The far end of a block at its mark: exactly one of past and read.",
    "one": [
      "past",
      "read"
    ],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "The mark: its running distance from the wall's start, a length."
      },
      {
        "name": "past",
        "kind": "length",
        "instead": [
          "read"
        ],
        "help": "How far the block's end is past the mark, a length, minus short of it."
      },
      {
        "name": "read",
        "kind": "length",
        "instead": [
          "past"
        ],
        "help": "What the tape reads at the block's end, a length."
      }
    ]
  },
  "unit_sample": {
    "help": "Units of the batch, measured: together in a dry, tight row, or one by one.",
    "one": [],
    "fields": [
      {
        "name": "together",
        "kind": "whole",
        "help": "How many lie in the row."
      },
      {
        "name": "row",
        "kind": "length",
        "help": "The row's length, a length."
      },
      {
        "name": "singles",
        "kind": "length",
        "list": true,
        "help": "Units one by one, lengths."
      }
    ]
  },
  "course_laid": {
    "help": "A course of a wall laid from end to end.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      }
    ]
  },
  "gauge_reading": {
    "help": "The top of a course against the gauge rod (story pole).",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      },
      {
        "name": "high",
        "kind": "length",
        "needed": true,
        "help": "How far its top is above its mark, a length, minus below it."
      }
    ]
  },
  "unit_setting": {
    "help": "One unit set, read at its four corners against the line's height; near is the end already met.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      },
      {
        "name": "near_outer",
        "kind": "length",
        "needed": true,
        "help": "Outer corner at the near end: over, a length, minus under."
      },
      {
        "name": "near_inner",
        "kind": "length",
        "needed": true,
        "help": "Inner corner at the near end: over, a length, minus under."
      },
      {
        "name": "far_outer",
        "kind": "length",
        "needed": true,
        "help": "Outer corner at the far end: over, a length, minus under."
      },
      {
        "name": "far_inner",
        "kind": "length",
        "needed": true,
        "help": "Inner corner at the far end: over, a length, minus under."
      },
      {
        "name": "bed",
        "kind": "length",
        "needed": true,
        "help": "The bed at its thinnest, as the unit lies, a length."
      },
      {
        "name": "line_gap",
        "kind": "length",
        "help": "The gap between its face and the line, a length."
      }
    ]
  },
  "gap_reading": {
    "help": "The gap that a closure has to fill.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "The mark at the gap's near side: its running distance, a length."
      },
      {
        "name": "measured",
        "kind": "length",
        "needed": true,
        "help": "The gap between the two units that stand, a length."
      }
    ]
  },
  "wall_check": {
    "help": "A finished part of a wall checked, or a joint measured.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      },
      {
        "name": "what",
        "kind": "choice",
        "choices": [
          "plumb",
          "level",
          "line",
          "bed-joint",
          "head-joint",
          "position"
        ],
        "needed": true,
        "help": "What was checked."
      },
      {
        "name": "over",
        "kind": "length",
        "help": "The length or height that it was read over; not for joints."
      },
      {
        "name": "off",
        "kind": "length",
        "needed": true,
        "help": "The deviation, or a joint's width, a length, minus the other way."
      },
      {
        "name": "may_be_wrong",
        "kind": "length",
        "help": "How far the instrument may be wrong, either way, a length; absent: as a mark is read."
      }
    ]
  },
  "found_place": {
    "help": "A jamb or a wall's far corner as it was found to stand: fixed from now on, and the rest is solved again.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "what",
        "kind": "choice",
        "choices": [
          "near-jamb",
          "far-jamb",
          "wall-end"
        ],
        "needed": true,
        "help": "Which face was found."
      },
      {
        "name": "opening",
        "kind": "text",
        "help": "The opening whose jamb it is."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Its running distance from the wall's start, a length, actual."
      }
    ]
  },
  "remark": {
    "help": "The course that the entry's note or photos tell of.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "The course."
      }
    ]
  },
  "grouted": {
    "help": "A cell, or the trough of a beam or a lintel, filled with grout to the top of a course, or consolidated again.",
    "one": [],
    "fields": [
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "Up to its top: of a cell the last course of the lift, of a trough its own."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Its place as the pour card lists it: a bar's centre or a trough's start, from the wall's start, a length."
      },
      {
        "name": "work",
        "kind": "choice",
        "choices": [
          "filled",
          "again"
        ],
        "needed": true,
        "help": "What was done."
      }
    ]
  },
  "looked_at": {
    "help": "A line of the inspection list, looked at and right.",
    "one": [],
    "fields": [
      {
        "name": "what",
        "kind": "choice",
        "choices": [
          "bar",
          "cleanout",
          "floor",
          "beam",
          "lintel"
        ],
        "needed": true,
        "help": "What was looked at."
      },
      {
        "name": "on",
        "kind": "text",
        "needed": true,
        "help": "The wall."
      },
      {
        "name": "course",
        "kind": "whole",
        "needed": true,
        "help": "Its course; of bars and cleanouts the pour's lowest."
      },
      {
        "name": "at",
        "kind": "length",
        "needed": true,
        "help": "Its place as the list has it, from the wall's start, a length: a bar's centre, or where a beam or a lintel starts."
      }
    ]
  }
};
