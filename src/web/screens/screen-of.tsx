import type { ComponentType } from 'preact';
import { lazy, Suspense } from 'preact/compat';
import { design } from '../state/current.ts';
import type { Screen } from '../state/screen.ts';
import { words } from '../words/en.ts';

const load = (from: () => Promise<ComponentType>) => lazy(async () => ({ default: await from() }));

/** Each screen is fetched when it is first shown. */
const SCREENS: Readonly<Record<Screen, ComponentType>> = {
  shape: load(async () => (await import('./shape/shape-screen.tsx')).ShapeScreen),
  joints: load(async () => (await import('./joints/joints-screen.tsx')).JointsScreen),
  wood: load(async () => (await import('./wood/wood-screen.tsx')).WoodScreen),
  routing: load(async () => (await import('./routing/routing-screen.tsx')).RoutingScreen),
  sheets: load(async () => (await import('./sheets/sheets-screen.tsx')).SheetsScreen),
  book: load(async () => (await import('./book/book-screen.tsx')).BookScreen),
  study: load(async () => (await import('./study/study-screen.tsx')).StudyScreen),
  'own-shape': load(async () => (await import('./own-shape/own-shape-screen.tsx')).OwnShapeScreen),
  designs: load(async () => (await import('./designs/designs-screen.tsx')).DesignsScreen),
};

export function ScreenOf({ name }: { readonly name: Screen }) {
  const Shown = SCREENS[name];
  if (name !== 'designs' && name !== 'own-shape' && design.value === undefined) {
    return <p class="waiting">{words.noDesign}</p>;
  }
  return (
    <Suspense fallback={<p class="waiting">{words.loading}</p>}>
      <Shown />
    </Suspense>
  );
}
