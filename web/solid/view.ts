// The units in space, drawn in ink lines: white boxes with black edges, exceptions hatched and lettered. No textures.
// This file and three are fetched only when the view is opened.
import {
  BoxGeometry,
  BufferAttribute,
  BufferGeometry,
  Color,
  EdgesGeometry,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  InstancedMesh,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  PerspectiveCamera,
  Raycaster,
  Scene,
  ShaderMaterial,
  Vector2,
  WebGLRenderer,
} from "three";
import { kEdgeFragment, kEdgeVertex, kFaceFragment, kFaceVertex } from "./shaders";
import type { Stock } from "./stock";

export interface Inks {
  readonly paper: string;
  readonly unit: string;
  readonly tint: string;
  readonly grey: string;
  readonly ink: string;
  readonly soft: string;
  readonly chalk: string;
}

export interface View {
  lay(stock: Stock): void;
  upTo(course: number): void;
  ink(inks: Inks): void;
  turn(around: number, up: number): void;
  nearer(factor: number): void;
  home(): void;
  choose(name: string | undefined): void;
  /// The unit under a place on the canvas, in CSS pixels.
  unitAt(x: number, y: number): string | undefined;
  resize(): void;
  /// Units drawn now.
  drawn(): number;
  end(): void;
}

const kBeginning = { around: -0.95, up: 0.62 } as const;

interface Bodies {
  readonly faces: InstancedMesh<BoxGeometry, ShaderMaterial>;
  readonly edges: LineSegments<InstancedBufferGeometry, ShaderMaterial>;
  readonly letters: LineSegments<BufferGeometry, LineBasicMaterial>;
  readonly bars: LineSegments<BufferGeometry, LineBasicMaterial>;
}

function colour(): { value: Color } {
  return { value: new Color() };
}

function facesOf(stock: Stock, material: ShaderMaterial): InstancedMesh<BoxGeometry, ShaderMaterial> {
  const count = stock.names.length;
  const geometry = new BoxGeometry(1, 1, 1);
  geometry.setAttribute("hatch", new InstancedBufferAttribute(stock.hatches, 1));
  geometry.setAttribute("chosen", new InstancedBufferAttribute(new Float32Array(count), 1));
  const mesh = new InstancedMesh(geometry, material, count);
  const matrix = new Matrix4();
  for (let at = 0; at < count; ++at) {
    const value = (list: Float32Array, k: number): number => list[at * 3 + k] ?? 0;
    matrix.makeScale(value(stock.sizes, 0), value(stock.sizes, 1), value(stock.sizes, 2));
    matrix.setPosition(value(stock.middles, 0), value(stock.middles, 1), value(stock.middles, 2));
    mesh.setMatrixAt(at, matrix);
  }
  mesh.frustumCulled = false;
  return mesh;
}

function edgesOf(stock: Stock, material: ShaderMaterial): LineSegments<InstancedBufferGeometry, ShaderMaterial> {
  const box = new BoxGeometry(1, 1, 1);
  const edges = new EdgesGeometry(box);
  const geometry = new InstancedBufferGeometry();
  geometry.setAttribute("position", edges.getAttribute("position"));
  geometry.setAttribute("middle", new InstancedBufferAttribute(stock.middles, 3));
  geometry.setAttribute("size", new InstancedBufferAttribute(stock.sizes, 3));
  box.dispose();
  const lines = new LineSegments(geometry, material);
  lines.frustumCulled = false;
  return lines;
}

function linesOf(points: Float32Array, material: LineBasicMaterial): LineSegments<BufferGeometry, LineBasicMaterial> {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(points, 3));
  const lines = new LineSegments(geometry, material);
  lines.frustumCulled = false;
  return lines;
}

/// Bars up to a height, as line ends.
function barPoints(stock: Stock, top: number): Float32Array {
  const points: number[] = [];
  for (let at = 0; at + 3 < stock.bars.length; at += 4) {
    const [x, y, from, to] = stock.bars.subarray(at, at + 4) as unknown as [number, number, number, number];
    if (from < top) points.push(x, y, from, x, y, Math.min(to, top) + 0.25);
  }
  return Float32Array.from(points);
}

export function makeView(canvas: HTMLCanvasElement): View {
  const renderer = new WebGLRenderer({ canvas, antialias: true });
  const scene = new Scene();
  const camera = new PerspectiveCamera(30, 1, 0.05, 2000);
  camera.up.set(0, 0, 1);
  const uniforms = { unit: colour(), tint: colour(), grey: colour(), ink: colour(), chalk: colour() };
  const faceMaterial = new ShaderMaterial({
    uniforms,
    vertexShader: kFaceVertex,
    fragmentShader: kFaceFragment,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  const edgeMaterial = new ShaderMaterial({
    uniforms: { ink: uniforms.ink },
    vertexShader: kEdgeVertex,
    fragmentShader: kEdgeFragment,
  });
  const letterMaterial = new LineBasicMaterial();
  const barMaterial = new LineBasicMaterial();

  let stock: Stock | undefined;
  let bodies: Bodies | undefined;
  let course = 1;
  let around: number = kBeginning.around;
  let up: number = kBeginning.up;
  let far = 1;
  let asked = false;

  const place = (): void => {
    if (stock === undefined) return;
    const [lx, ly, lz] = stock.low;
    const [hx, hy, hz] = stock.high;
    const reach = Math.hypot(hx - lx, hy - ly, hz - lz) / 2;
    const narrow = Math.min(1, camera.aspect);
    const distance = (reach / Math.sin((camera.fov * Math.PI) / 360) / narrow) * far * 0.74;
    const middle = [(lx + hx) / 2, (ly + hy) / 2, (lz + hz) / 2] as const;
    camera.position.set(
      middle[0] + distance * Math.cos(up) * Math.cos(around),
      middle[1] + distance * Math.cos(up) * Math.sin(around),
      middle[2] + distance * Math.sin(up),
    );
    camera.lookAt(...middle);
    camera.near = Math.max(0.05, distance - reach * 2);
    camera.far = distance + reach * 3;
    camera.updateProjectionMatrix();
  };
  const draw = (): void => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      place();
      renderer.render(scene, camera);
      canvas.setAttribute("data-units", String(bodies?.faces.count ?? 0));
    });
  };
  const clear = (): void => {
    if (bodies === undefined) return;
    for (const body of Object.values(bodies) as { geometry: BufferGeometry }[]) body.geometry.dispose();
    bodies.faces.dispose();
    scene.clear();
  };
  const count = (): void => {
    if (stock === undefined || bodies === undefined) return;
    const at = Math.min(course, stock.unitsUpTo.length - 1);
    bodies.faces.count = stock.unitsUpTo[at] ?? 0;
    bodies.edges.geometry.instanceCount = bodies.faces.count;
    bodies.letters.geometry.setDrawRange(0, stock.pointsUpTo[at] ?? 0);
    bodies.bars.geometry.setAttribute("position", new BufferAttribute(barPoints(stock, stock.tops[at] ?? 0), 3));
    draw();
  };

  return {
    lay(next) {
      clear();
      stock = next;
      bodies = {
        faces: facesOf(next, faceMaterial),
        edges: edgesOf(next, edgeMaterial),
        letters: linesOf(next.letters, letterMaterial),
        bars: linesOf(barPoints(next, 0), barMaterial),
      };
      scene.add(bodies.faces, bodies.edges, bodies.letters, bodies.bars);
      count();
    },
    upTo(next) {
      course = next;
      count();
    },
    ink(inks) {
      renderer.setClearColor(new Color(inks.paper));
      uniforms.unit.value.set(inks.unit);
      uniforms.tint.value.set(inks.tint);
      uniforms.grey.value.set(inks.grey);
      uniforms.ink.value.set(inks.ink);
      uniforms.chalk.value.set(inks.chalk);
      letterMaterial.color.set(inks.ink);
      barMaterial.color.set(inks.soft);
      draw();
    },
    turn(by, rise) {
      around += by;
      up = Math.min(1.45, Math.max(-0.2, up + rise));
      draw();
    },
    nearer(factor) {
      far = Math.min(3, Math.max(0.08, far / factor));
      draw();
    },
    home() {
      around = kBeginning.around;
      up = kBeginning.up;
      far = 1;
      draw();
    },
    choose(name) {
      const chosen = bodies?.faces.geometry.getAttribute("chosen");
      if (!(chosen instanceof InstancedBufferAttribute) || stock === undefined) return;
      for (const [at, one] of stock.names.entries()) chosen.setX(at, one === name ? 1 : 0);
      chosen.needsUpdate = true;
      draw();
    },
    unitAt(x, y) {
      if (bodies === undefined || stock === undefined) return undefined;
      const caster = new Raycaster();
      caster.setFromCamera(new Vector2((x / canvas.clientWidth) * 2 - 1, 1 - (y / canvas.clientHeight) * 2), camera);
      bodies.faces.computeBoundingSphere();
      const hit = caster.intersectObject(bodies.faces)[0];
      return hit?.instanceId === undefined ? undefined : stock.names[hit.instanceId];
    },
    resize() {
      const { clientWidth, clientHeight } = canvas;
      if (clientWidth === 0 || clientHeight === 0) return;
      renderer.setPixelRatio(Math.min(2, devicePixelRatio));
      renderer.setSize(clientWidth, clientHeight, false);
      camera.aspect = clientWidth / clientHeight;
      draw();
    },
    drawn: () => bodies?.faces.count ?? 0,
    end() {
      clear();
      renderer.dispose();
    },
  };
}
