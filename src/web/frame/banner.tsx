import { fault } from '../engine/engine.ts';
import { keepsNothing } from '../state/begin.ts';
import { design, keepWaiting, unkept } from '../state/current.ts';
import { saveDesign } from '../state/design-files.ts';
import { newerIsHere, takeNewer } from '../state/offline.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';

const said = words.trouble;

/** What the maker must know whatever the screen: that something is not kept, a fault, a newer version. */
export function Banner() {
  if (fault.value !== undefined) {
    return (
      <div class="banner grave" role="alert">
        <p>{said.fault}</p>
        <p>{fault.value.split('\n')[0]}</p>
        <SaveButton />
      </div>
    );
  }
  if (unkept.value !== undefined || keepsNothing.value) {
    const why = keepsNothing.value || unkept.value === undefined ? said.none : said[unkept.value];
    return (
      <div class="banner grave" role="alert">
        <p>{why}</p>
        <SaveButton />
        {keepsNothing.value ? null : <Button onClick={() => void keepWaiting()}>{said.again}</Button>}
      </div>
    );
  }
  if (newerIsHere.value) {
    return (
      <div class="banner" role="status">
        <p>{said.update}</p>
        <Button onClick={takeNewer}>{said.reload}</Button>
      </div>
    );
  }
  return null;
}

function SaveButton() {
  const inHand = design.value;
  if (inHand === undefined) return null;
  return (
    <Button look="main" onClick={() => void saveDesign(inHand)}>
      {said.save}
    </Button>
  );
}
