// Texts of the order list and of the days.
const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

export const order = {
  label: "Order list",
  what: "What",
  amount: "Order",
  cost: "Cost",
  beside: "Beside",
  mustNot: (instead: string): string =>
    instead === "" ? "Must not run short." : `Must not run short. In need: ${instead}.`,
  goods: "Goods",
  tax: "Tax",
  delivery: "Delivery",
  all: "In all",
  fromTo: (least: number, most: number): string => `${least} to ${most}`,
  chosen: "(ordered by this)",
  unpriced: (count: number): string => `No price yet: ${many(count, "article", "articles")}.`,
  save: "Save the list for a spreadsheet",
  reckoned: "How mortar, water and grout are reckoned",
  assumed: "What is assumed",
  stated: "as the job says",
  unstated: "assumed",
  change: "Change it",
  brought: (count: number): string => `${count} brought.`,
};

export const days = {
  label: "Days",
  count: (count: number, pace: "assumed" | "log" | "stated"): string =>
    `${many(count, "day", "days")}${{ assumed: ", at an assumed pace", log: ", at the log's pace", stated: "" }[pace]}`,
  chance: "Chance of being done",
  doneBy: "Done by",
  of: (programmes: number): string => `of ${programmes} programmes drawn`,
  day: "Day",
  tonight: "Tonight",
  laid: (blocks: number, batches: number): string =>
    `${many(blocks, "block", "blocks")}, ${many(batches, "batch", "batches")} of mortar`,
  brace: (walls: string, zone: string): string =>
    `Without grout: ${walls}. Brace before you leave; keep ${zone} clear on both sides.`,
  noStart: "With the date of the first day, days have dates and can go into a calendar.",
  save: "Save the days for a calendar",
};

export const site = {
  label: "What comes when",
  count: (drops: number): string => many(drops, "delivery", "deliveries"),
  loads: (loads: number): string => (loads === 0 ? "" : `, ${many(loads, "load", "loads")}`),
  for: "For",
  what: "What",
  weight: "Weight",
  unweighed: (count: number): string => `Weight not stated: ${many(count, "article", "articles")}.`,
  tooHeavy: (names: string): string => `More than the truck carries: ${names}.`,
  day: (number: number, date: string | undefined): string =>
    date === undefined ? `day ${number}` : `day ${number}, ${date}`,
  pallets: "Where pallets stand",
  palletCount: (count: number): string => many(count, "pallet", "pallets"),
  picture: "Walls and pallets from above; the line round the walls is kept clear",
  keepClear: (zone: string): string => `No pallet within ${zone} of a wall that has no bracing.`,
  carried: (far: string): string => `Blocks are carried ${far} in all; nothing less does on these places.`,
  pallet: "Pallet",
  stands: "Stands",
  serves: "For the blocks",
  standsAt: (side: string, along: string, out: string): string => `outside ${side}: ${along} along, ${out} off`,
  servesFrom: (fromSide: string, from: string, toSide: string, to: string): string =>
    `from ${fromSide} ${from} to ${toSide} ${to}`,
  spare: "spare",
};
