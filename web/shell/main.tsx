// Where the page starts: look, engine, store, drawing.
import "../look/tokens.css";
import "../look/page.css";
import "../look/spine.css";
import "../look/point.css";
import "../look/order.css";
import "../look/form.css";
import "../look/start.css";
import "../look/building.css";
import "../look/margin.css";
import "../look/further.css";
import "../look/ground.css";
import "../look/drawing.css";
import "../look/print.css";
import "../look/wall.css";
import { render } from "preact";
import exampleText from "../../examples/kiln-house.json?raw";
import { EngineClient } from "../engine/client";
import { codesOfThisBuild } from "../engine/code";
import { followLook } from "../look/theme";
import { startOffline } from "../offline";
import { App } from "./App";
import { firstScreenPainted, putFirstScreenAway, takeFirstScreen } from "./first_screen";
import { useEngine } from "../state/engine_port";
import { startKeeping } from "../state/keeping";
import { followAddress, place } from "../state/point";
import { listenForDrops, listenForKeys, nameTheTab } from "./listening";
import { fetchAllWhenIdle, fetchPlace } from "./pages";
import { putOnTable } from "../state/table";

function begin(): void {
  const root = document.getElementById("page");
  if (root === null) return;
  followLook();
  followAddress();
  void fetchPlace(place.value);
  const codes = codesOfThisBuild();
  useEngine(EngineClient.inBrowser(codes));
  nameTheTab();
  listenForKeys();
  listenForDrops();
  void startKeeping(exampleText).catch(() => putOnTable(exampleText, true));
  takeFirstScreen();
  const offline = startOffline(codes.whole.there);
  void codes[codes.first].there.then(fetchAllWhenIdle);
  void firstScreenPainted().then(() => {
    render(<App offline={offline} />, root);
    putFirstScreenAway();
  });
}

begin();
