// Made when the page is built (tools/first_screen_plugin.ts).
declare module "virtual:example-questions" {
  const points: readonly import("../engine/contract").HoldPoint[];
  export default points;
}
