// Where the page starts: look, engine, store, drawing.
import "../look/tokens.css";
import "../look/page.css";
import "../look/drawing.css";
import "../look/print.css";
import "../look/wall.css";
import { render } from "preact";
import exampleText from "../../examples/kiln-house.json?raw";
import { EngineClient } from "../engine/client";
import { followLook } from "../look/theme";
import { startOffline } from "../offline";
import { App } from "./App";
import { useEngine } from "./engine_port";
import { startKeeping } from "./keeping";
import { listenForDrops, listenForKeys, nameTheTab } from "./listening";
import { putOnTable } from "./actions";

function begin(): void {
  const root = document.getElementById("page");
  if (root === null) return;
  followLook();
  useEngine(EngineClient.inBrowser());
  render(<App offline={startOffline()} />, root);
  nameTheTab();
  listenForKeys();
  listenForDrops();
  void startKeeping(exampleText).catch(() => putOnTable(exampleText, true));
}

begin();
