// The first hold point: sizes, openings and blocks are fixed.
import { DrawingTools, ElevationView, PlanView } from "../draw/Views";
import { Forms } from "../parts/form/Forms";
import { InHand } from "../parts/InHand";
import { FindPiece, PieceCard } from "../parts/PieceCard";
import { PointPage } from "../parts/PointPage";
import { Solid } from "../solid/Solid";
import { brief, inHand } from "../state/signals";
import { Counts } from "./Counts";
import { Days } from "./Days";
import { Offers } from "./Offers";
import { OrderList } from "./OrderList";
import { Site } from "./Site";
import { TitleBlock } from "./TitleBlock";

function Fields() {
  const chosen = inHand.value !== "";
  return (
    <>
      {chosen ? <InHand key="selected" /> : null}
      <TitleBlock />
      <PieceCard />
      <Offers />
      {chosen ? null : <InHand key="building" />}
      <Forms point="order" />
      <DrawingTools />
    </>
  );
}

export function Order() {
  return (
    <PointPage
      point="order"
      drawing={<PlanView />}
      fields={<Fields />}
      early
      more={
        <>
          <ElevationView later />
          <div class="schedule">
            <Counts />
            <FindPiece />
          </div>
          <OrderList />
          <Days />
          <Site />
          {brief.value ? null : <Solid />}
        </>
      }
    />
  );
}
