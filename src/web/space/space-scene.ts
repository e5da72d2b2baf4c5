import {
  AmbientLight,
  BoxGeometry,
  BufferAttribute,
  BufferGeometry,
  Color,
  CylinderGeometry,
  DirectionalLight,
  EdgesGeometry,
  GridHelper,
  Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { toCreasedNormals } from 'three/addons/utils/BufferGeometryUtils.js';
import type { MeshesInHand } from '../engine/answers/meshes.ts';
import { BEHIND_EDGES, createTextures, type FigureInSpace } from './figure-textures.ts';

/** What a part of the space is called under the pointer. */
export interface SpaceHit {
  readonly name: string;
  readonly mark: string;
}

export interface SpaceScene {
  readonly show: (meshes: MeshesInHand, chosen: string | undefined) => void;
  /** The figure that faces carry, over what is shown. */
  readonly carry: (figures: readonly FigureInSpace[]) => void;
  readonly resize: () => void;
  /** Takes the colours of the page anew. */
  readonly recolour: () => void;
  /** Turns about the plumb line and up or down, degrees. */
  readonly turn: (about: number, up: number) => void;
  readonly zoom: (by: number) => void;
  readonly reset: () => void;
  readonly hitAt: (clientX: number, clientY: number) => SpaceHit | undefined;
  readonly dispose: () => void;
}

/** Groups of a part's triangles, and so its materials. */
const OTHER = 0;
const FACE = 1;
const BACK = 2;

/** Edges where faces meet at more than this are drawn, degrees; flatter ones are of a curve. */
const CREASE = 20;
const FIELD_OF_VIEW = 28;
/** Seen first from here: a little from the left, a little from above. */
const FIRST = { about: -0.55, up: 0.32 };

/**
 * The base in space on a canvas, drawn whenever something changes and only then. Throws where the browser has no WebGL. World as everywhere:
 * x along the table, y to the back, z up, mm.
 */
export function openSpace(canvas: HTMLCanvasElement): SpaceScene {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  const scene = new Scene();
  const camera = new PerspectiveCamera(FIELD_OF_VIEW, 1, 10, 50_000);
  camera.up.set(0, 0, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.minDistance = 200;
  controls.maxDistance = 20_000;
  const key = new DirectionalLight('#ffffff', 1.9);
  key.position.set(-0.6, -1, 1.4);
  scene.add(new AmbientLight('#ffffff', 1.5), key);
  const base = new Group();
  scene.add(base);
  let shown: MeshesInHand | undefined;
  let carried: readonly FigureInSpace[] = [];
  const textures = createTextures();
  let chosenPart: string | undefined;
  let colours = readColours(canvas);
  let asked = false;

  const draw = (): void => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      renderer.render(scene, camera);
    });
  };
  controls.addEventListener('change', draw);

  const rebuild = (): void => {
    empty(base);
    if (shown === undefined) return;
    const wood = new MeshLambertMaterial({ color: colours.wood, ...BEHIND_EDGES });
    const picked = new MeshLambertMaterial({ color: colours.picked, ...BEHIND_EDGES });
    const line = new LineBasicMaterial({ color: colours.line });
    const faint = new LineBasicMaterial({ color: colours.faint });
    for (const part of shown.parts) {
      const raw = new BufferGeometry();
      raw.setAttribute('position', new BufferAttribute(part.positions, 3));
      raw.setAttribute('uv', new BufferAttribute(part.plane, 2));
      raw.setIndex(new BufferAttribute(part.triangles, 1));
      const { other, face, back } = part.counts;
      raw.addGroup(0, 3 * other, OTHER);
      raw.addGroup(3 * other, 3 * face, FACE);
      raw.addGroup(3 * (other + face), 3 * back, BACK);
      const geometry = toCreasedNormals(raw, (CREASE * Math.PI) / 180);
      raw.dispose();
      const plain = part.name === chosenPart ? picked : wood;
      const mesh = new Mesh(geometry, [plain, plain, plain]);
      mesh.userData = { part: part.part, plain };
      Object.assign(mesh.userData, { name: part.name, mark: part.mark });
      base.add(mesh, new LineSegments(new EdgesGeometry(geometry, CREASE), line));
    }
    base.add(topLines(shown.top, faint), floorGrid(shown.top, colours.faint));
    dress();
    draw();
  };

  /** Each face with the figure that it carries, or as plain wood. */
  const dress = (): void => {
    for (const each of base.children) {
      if (!(each instanceof Mesh) || each.userData.part === undefined) continue;
      const { part, plain, mark } = each.userData as {
        part: string;
        plain: Material;
        name: string;
        mark: string;
      };
      const materials = each.material as Material[];
      for (const [at, face] of [
        [FACE, 'face'],
        [BACK, 'back'],
      ] as const) {
        const own = carried.find((figure) => figure.piece === part && figure.face === face);
        if (materials[at] !== plain) materials[at]?.dispose();
        materials[at] = own === undefined ? plain : textures.materialOf(own, `${part} ${mark} ${face}`);
      }
    }
  };

  const reset = (): void => {
    if (shown === undefined) return;
    const { length, width, under } = shown.top;
    const target = new Vector3(0, 0, under / 2);
    const round = Math.hypot(length, width, under) / 2;
    const away = round / Math.sin(((FIELD_OF_VIEW / 2) * Math.PI) / 180) / Math.min(1, camera.aspect);
    const flat = Math.cos(FIRST.up) * away;
    camera.position.set(
      target.x + Math.sin(FIRST.about) * flat,
      target.y - Math.cos(FIRST.about) * flat,
      target.z + Math.sin(FIRST.up) * away,
    );
    controls.target.copy(target);
    controls.update();
    draw();
  };

  return {
    show: (meshes, chosen) => {
      const first = shown === undefined;
      if (shown === meshes && chosen === chosenPart) return;
      shown = meshes;
      chosenPart = chosen;
      rebuild();
      if (first) reset();
    },
    carry: (figures) => {
      carried = figures;
      textures.keep(figures.map(({ picture }) => picture));
      dress();
      draw();
    },
    resize: () => {
      const { clientWidth, clientHeight } = canvas.parentElement!;
      if (clientWidth === 0 || clientHeight === 0) return;
      renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
      renderer.setSize(clientWidth, clientHeight, false);
      camera.aspect = clientWidth / clientHeight;
      camera.updateProjectionMatrix();
      draw();
    },
    recolour: () => {
      colours = readColours(canvas);
      rebuild();
    },
    turn: (about, up) => {
      const from = camera.position.clone().sub(controls.target);
      from.applyAxisAngle(new Vector3(0, 0, 1), (about * Math.PI) / 180);
      const side = new Vector3(0, 0, 1).cross(from).normalize();
      const raised = from.clone().applyAxisAngle(side, (-up * Math.PI) / 180);
      const steep = Math.abs(raised.z) / raised.length() > 0.995;
      camera.position.copy(controls.target).add(steep ? from : raised);
      controls.update();
      draw();
    },
    zoom: (by) => {
      const from = camera.position.clone().sub(controls.target);
      camera.position.copy(controls.target).add(from.multiplyScalar(1 / by));
      controls.update();
      draw();
    },
    reset,
    hitAt: (clientX, clientY) => {
      const { left, top, width, height } = canvas.getBoundingClientRect();
      const at = new Vector2((2 * (clientX - left)) / width - 1, 1 - (2 * (clientY - top)) / height);
      const ray = new Raycaster();
      ray.setFromCamera(at, camera);
      const meshes = base.children.filter((each) => each instanceof Mesh && each.userData.name);
      const hit = ray.intersectObjects(meshes, false)[0]?.object.userData;
      return hit as SpaceHit | undefined;
    },
    dispose: () => {
      empty(base);
      textures.keep([]);
      controls.dispose();
      renderer.dispose();
    },
  };
}

/** The top as thin lines, so that what is under it can be seen. */
function topLines(
  { round, length, width, thickness, under }: MeshesInHand['top'],
  line: LineBasicMaterial,
): LineSegments {
  const solid = round ? new CylinderGeometry(0.5, 0.5, 1, 96).rotateX(Math.PI / 2) : new BoxGeometry(1, 1, 1);
  const edges = new EdgesGeometry(solid, 30);
  solid.dispose();
  const lines = new LineSegments(edges, line);
  lines.scale.set(length, width, thickness);
  lines.position.set(0, 0, under + thickness / 2);
  return lines;
}

/** The floor, a line every 200 mm. */
function floorGrid({ length, width }: MeshesInHand['top'], colour: Color): GridHelper {
  const side = Math.ceil((Math.max(length, width) * 1.6) / 400) * 400;
  const grid = new GridHelper(side, side / 200, colour, colour);
  grid.rotation.x = Math.PI / 2;
  const material = grid.material as Material;
  material.transparent = true;
  material.opacity = 0.5;
  return grid;
}

function empty(group: Group): void {
  for (const child of [...group.children]) {
    group.remove(child);
    if (child instanceof Mesh || child instanceof LineSegments) child.geometry.dispose();
  }
}

function readColours(element: Element) {
  const style = getComputedStyle(element);
  const read = (name: string): Color => new Color(style.getPropertyValue(name).trim() || '#888888');
  return {
    wood: read('--wood'),
    picked: read('--accent'),
    line: read('--graphite'),
    faint: read('--faint'),
  };
}
