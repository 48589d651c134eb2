// The entry path and the connection: see the decisions "Entry path" and "Live pages".
import "./circuit.js";
import "./reconnect.js";
import "./person.js";
import "./next.js"; // before the sheets, which keep a press to themselves
import "./sheets.js";
import "./drafts.js";
import "./notice.js";
import "./term.js";
import "./idle.js";
import "./back.js";
import "./opened.js";
import "./first.js";
import "./unfolded.js";
import "./find.js";
import "./foot.js";
import { fetchTicket, send } from "./sending.js";

if (document.querySelector("[data-live]")) {
  await fetchTicket();
  send();
}
