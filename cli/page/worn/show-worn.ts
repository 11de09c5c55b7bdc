import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  HemisphereLight,
  Line,
  LineBasicMaterial,
  type Material,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  OrthographicCamera,
  Raycaster,
  Scene,
  Vector2,
  WebGLRenderer,
} from 'three';
import { figuresAt } from './figures-at.ts';
import type { ScenePiece, SceneReading, WornScene } from './scene.ts';
import { type Turntable, turntable } from './turntable.ts';

/** What is to be seen of a scene. */
export interface Shown {
  /** Names of pieces that are put away. */
  readonly hidden: ReadonlySet<string>;
  readonly body: boolean;
  readonly arms: boolean;
  readonly seams: boolean;
  readonly grain: boolean;
  /** The map that colours the cloth; none where pieces are told apart. */
  readonly map: string | undefined;
}

/** A scene on a page. */
export interface ShownScene {
  readonly show: (what: Shown) => void;
  readonly turntable: Turntable;
  /** What lies at a place of the picture: from -1 at its left and bottom to 1. */
  readonly read: (x: number, y: number) => SceneReading | undefined;
  /** Looks again how large the host is. */
  readonly resize: () => void;
  readonly dispose: () => void;
}

/** The element whose words tell what the scene shows. */
export const wordsId = 'worn-says';

const skin = '#d8c4b6';
/** Lines on light pieces, and on a map, which has dark colours and light ones. */
const [ink, chalk] = ['#1a1a1a', '#ffffff'];

/**
 * Shows a worn garment in an element that it fills with a canvas; nothing where the browser shows no solids. It is drawn
 * when something changed, never in between. Whoever takes the element away calls `dispose`.
 */
export function showWorn(host: HTMLElement, worn: WornScene): ShownScene | undefined {
  const renderer = rendererFor(host.ownerDocument);
  if (!renderer) return undefined;
  const canvas = renderer.domElement;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', worn.says);
  canvas.id = wordsId;
  host.append(canvas);
  const scene = new Scene();
  const camera = new OrthographicCamera();
  const light = new DirectionalLight('#ffffff', 2.2);
  camera.add(light);
  light.position.set(-0.5, 0.7, 1);
  scene.add(camera, new HemisphereLight('#ffffff', '#8a8078', 1.6));
  const cloth = worn.pieces.map((piece) => pieceMesh(worn, piece));
  const body = worn.body.map(({ points, triangles, name }) => {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(points, 3));
    geometry.setIndex(new BufferAttribute(triangles, 1));
    geometry.computeVertexNormals();
    const mesh = new Mesh(geometry, new MeshLambertMaterial({ color: skin }));
    mesh.name = name;
    return mesh;
  });
  const lines = worn.lines.map(({ points, kind }) => {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(points, 3));
    const line = new Line(geometry, new LineBasicMaterial({ color: ink }));
    line.name = kind;
    return line;
  });
  scene.add(...cloth.map(({ mesh }) => mesh), ...body, ...lines);
  let waiting = 0;
  const draw = (): void => {
    if (waiting !== 0) return;
    waiting = requestAnimationFrame(() => {
      waiting = 0;
      renderer.render(scene, camera);
    });
  };
  const turned = turntable(camera, host, boundsOf(worn.points), draw);
  const resize = (): void => {
    const { clientWidth: width, clientHeight: height } = host;
    renderer.setPixelRatio(devicePixelRatio);
    // How large it is shown is the style's.
    renderer.setSize(width, height, false);
    turned.resize(width, height);
  };
  resize();
  // What a canvas of this kind shows is gone once it has been shown: for paper it is drawn in that very moment.
  const print = (): void => renderer.render(scene, camera);
  addEventListener('beforeprint', print);
  return {
    turntable: turned,
    resize,
    show: ({ hidden, body: withBody, arms, seams, grain, map }) => {
      for (const piece of cloth) {
        piece.mesh.visible = !hidden.has(piece.mesh.name);
        piece.colour(map);
      }
      for (const mesh of body) mesh.visible = withBody && (arms || !mesh.name.includes('arm'));
      for (const line of lines) {
        line.visible = line.name === 'seam' ? seams : grain;
        line.material.color.set(map === undefined ? ink : chalk);
      }
      draw();
    },
    read: (x, y) => {
      const ray = new Raycaster();
      ray.setFromCamera(new Vector2(x, y), camera);
      const visible = [...cloth.map(({ mesh }) => mesh), ...body].filter((mesh) => mesh.visible);
      const [hit] = ray.intersectObjects(visible, false);
      const piece = worn.pieces.find(({ name }) => name === hit?.object.name);
      return hit && piece ? figuresAt(worn, piece, hit.faceIndex ?? 0, hit.point) : undefined;
    },
    dispose: () => {
      cancelAnimationFrame(waiting);
      removeEventListener('beforeprint', print);
      turned.dispose();
      for (const mesh of [...cloth.map((piece) => piece.mesh), ...body, ...lines]) {
        mesh.geometry.dispose();
        (mesh.material as Material).dispose();
      }
      renderer.dispose();
      canvas.remove();
    },
  };
}

function rendererFor(page: Document): WebGLRenderer | undefined {
  const canvas = page.createElement('canvas');
  const context = canvas.getContext('webgl2', { alpha: true, antialias: true });
  return context ? new WebGLRenderer({ canvas, context }) : undefined;
}

/** A piece with corners of its own for every triangle, so that each can have a colour; normals are smooth all the same. */
function pieceMesh({ points, maps }: WornScene, { name, colour, triangles, first }: ScenePiece) {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(points, 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  geometry.computeVertexNormals();
  const apart = geometry.toNonIndexed();
  geometry.dispose();
  const colours = new Float32Array(3 * triangles.length);
  apart.setAttribute('color', new BufferAttribute(colours, 3));
  const plain = new MeshLambertMaterial({ color: colour, side: DoubleSide });
  // A colour that is looked up in a legend takes no shade.
  const mapped = new MeshBasicMaterial({ vertexColors: true, side: DoubleSide });
  const mesh: Mesh<BufferGeometry, Material> = new Mesh(apart, plain);
  mesh.name = name;
  return {
    mesh,
    colour: (map: string | undefined): void => {
      const found = maps.find((each) => each.name === map);
      mesh.material = found ? mapped : plain;
      if (!found) return;
      const steps = found.steps.map((step) => new Color(step.colour));
      for (let k = 0; k < triangles.length; k++)
        steps[found.stepOf[first + Math.floor(k / 3)] ?? 0]?.toArray(colours, 3 * k);
      (apart.getAttribute('color') as BufferAttribute).needsUpdate = true;
    },
  };
}

/** The middle of points, and how far they reach from it to any side, mm. */
function boundsOf(points: Float32Array) {
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const [i, value] of points.entries()) {
    low[i % 3] = Math.min(low[i % 3] as number, value);
    high[i % 3] = Math.max(high[i % 3] as number, value);
  }
  const middle = low.map((value, k) => (value + (high[k] as number)) / 2) as [number, number, number];
  return { middle, reach: Math.max(...low.map((value, k) => ((high[k] as number) - value) / 2)) };
}
