import { type OrthographicCamera, Vector3 } from 'three';

/** The views that have a name, by how far whoever looks has gone round, to the wearer's left, and up; radians. */
export const namedViews = {
  front: [0, 0],
  'three-quarter': [0.7, 0.12],
  side: [Math.PI / 2, 0],
  back: [Math.PI, 0],
} as const;

export type NamedView = keyof typeof namedViews;

/** How a scene is turned, moved and brought nearer. */
export interface Turntable {
  readonly look: (view: NamedView) => void;
  /** By so much round and up; radians. */
  readonly turn: (round: number, up: number) => void;
  /** So many times as large. */
  readonly zoom: (times: number) => void;
  /** The picture by so much of its height. */
  readonly move: (right: number, up: number) => void;
  readonly resize: (width: number, height: number) => void;
  readonly dispose: () => void;
}

/** Nobody looks from straight above or below: there round and round is one. */
const STEEPEST = 1.4;
const [FARTHEST, NEAREST] = [0.4, 30];

/** One finger, or a mouse's button, turns by so much for the whole height of the picture, radians. */
const BY_FINGER = 3;

/**
 * Turns what a camera sees round the middle of it: a finger or the mouse turns, two fingers move and enlarge, as does the
 * mouse with its other button, and its wheel. `changed` is told whenever there is something else to be seen.
 */
export function turntable(
  camera: OrthographicCamera,
  host: HTMLElement,
  { middle, reach }: { readonly middle: readonly [number, number, number]; readonly reach: number },
  changed: () => void,
): Turntable {
  const about = new Vector3(...middle);
  let [round, up]: readonly [number, number] = namedViews['three-quarter'];
  const apply = (): void => {
    const off = 10 * reach;
    camera.position.set(
      about.x + off * Math.cos(up) * Math.sin(round),
      about.y + off * Math.sin(up),
      about.z + off * Math.cos(up) * Math.cos(round),
    );
    camera.lookAt(about);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    changed();
  };
  const table: Turntable = {
    look: (view) => {
      [round, up] = namedViews[view];
      about.set(...middle);
      camera.zoom = 1;
      apply();
    },
    turn: (by, byUp) => {
      round += by;
      up = Math.max(-STEEPEST, Math.min(STEEPEST, up + byUp));
      apply();
    },
    zoom: (times) => {
      camera.zoom = Math.max(FARTHEST, Math.min(NEAREST, camera.zoom * times));
      apply();
    },
    move: (right, upward) => {
      const height = (camera.top - camera.bottom) / camera.zoom;
      const across = new Vector3().setFromMatrixColumn(camera.matrixWorld, 0);
      const along = new Vector3().setFromMatrixColumn(camera.matrixWorld, 1);
      about.addScaledVector(across, -right * height).addScaledVector(along, -upward * height);
      apply();
    },
    resize: (width, height) => {
      const half = 1.15 * reach;
      const wide = half * Math.max(1, width / Math.max(1, height));
      const tall = half * Math.max(1, height / Math.max(1, width));
      [camera.left, camera.right, camera.top, camera.bottom] = [-wide, wide, tall, -tall];
      [camera.near, camera.far] = [reach, 30 * reach];
      apply();
    },
    dispose: () => stop(),
  };
  const stop = byHand(host, table);
  return table;
}

/** Lets fingers, mouse and wheel turn a table; returns what ends that. */
function byHand(host: HTMLElement, table: Turntable): () => void {
  const down = new Map<number, readonly [number, number]>();
  const spread = (): number => {
    const [a, b] = [...down.values()];
    return a && b ? Math.hypot(b[0] - a[0], b[1] - a[1]) : 0;
  };
  const press = (event: PointerEvent): void => {
    host.setPointerCapture(event.pointerId);
    down.set(event.pointerId, [event.clientX, event.clientY]);
  };
  const drag = (event: PointerEvent): void => {
    const from = down.get(event.pointerId);
    if (!from) return;
    const height = host.clientHeight;
    const [x, y] = [(event.clientX - from[0]) / height, (event.clientY - from[1]) / height];
    const before = spread();
    down.set(event.pointerId, [event.clientX, event.clientY]);
    if (down.size > 1) {
      if (before > 0) table.zoom(spread() / before);
      table.move(x / 2, -y / 2);
    } else if (event.buttons === 2 || event.shiftKey) table.move(x, -y);
    else table.turn(-BY_FINGER * x, BY_FINGER * y);
  };
  const lift = (event: PointerEvent): void => {
    down.delete(event.pointerId);
  };
  const roll = (event: WheelEvent): void => {
    event.preventDefault();
    table.zoom(Math.exp(-event.deltaY / 600));
  };
  const noMenu = (event: Event): void => event.preventDefault();
  host.addEventListener('pointerdown', press);
  host.addEventListener('pointermove', drag);
  host.addEventListener('pointerup', lift);
  host.addEventListener('pointercancel', lift);
  host.addEventListener('wheel', roll, { passive: false });
  host.addEventListener('contextmenu', noMenu);
  return () => {
    host.removeEventListener('pointerdown', press);
    host.removeEventListener('pointermove', drag);
    host.removeEventListener('pointerup', lift);
    host.removeEventListener('pointercancel', lift);
    host.removeEventListener('wheel', roll);
    host.removeEventListener('contextmenu', noMenu);
  };
}
