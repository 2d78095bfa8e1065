// The solid, turned by buttons or touch. Loaded after the figures: three is most of the page's weight.
import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  Box3,
  Color,
  DirectionalLight,
  DoubleSide,
  FrontSide,
  Group,
  Mesh,
  MeshStandardMaterial,
  OrthographicCamera,
  Scene,
  Vector3,
  WebGLRenderer,
} from "three";
import type { Solid } from "../program/outline";

const steepest = 1.5;

/** What is shown, in the middle of the drawing, and the eye that goes around it. */
export class Turntable {
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #group = new Group();
  readonly #lamp = new DirectionalLight(0xffffff, 2.2);
  readonly #camera = new OrthographicCamera(-1, 1, 1, -1, -10, 10);
  #around = 0.5;
  #above = 0.45;
  #reach = 1;

  constructor(readonly canvas: HTMLCanvasElement) {
    this.#renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    this.#renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    this.#scene.add(this.#group, new AmbientLight(0xffffff, 1.4), this.#lamp);
    drag(canvas, (dx, dy) => this.#go(-dx * 0.01, dy * 0.01));
  }

  turn(by: number): void {
    this.#go(by, 0);
  }

  tip(by: number): void {
    this.#go(0, by);
  }

  show(solids: Solid[]): void {
    this.#clear();
    this.#group.position.set(0, 0, 0);
    this.#group.updateMatrixWorld();
    const box = new Box3();
    for (const solid of solids) {
      const mesh = mesh_of(solid);
      this.#group.add(mesh);
      box.expandByObject(mesh);
    }
    this.#group.position.copy(box.getCenter(new Vector3())).negate();
    this.#reach = box.getSize(new Vector3()).length() * 0.56;
    this.fit();
  }

  fit(): void {
    const { clientWidth: w, clientHeight: h } = this.canvas;
    if (!w || !h) return;
    this.#renderer.setSize(w, h, false);
    const reach = this.#reach;
    const [across, high] = [reach * Math.max(1, w / h), reach * Math.max(1, h / w)];
    Object.assign(this.#camera, {
      left: -across,
      right: across,
      top: high,
      bottom: -high,
      near: -10 * reach,
      far: 10 * reach,
    });
    this.#camera.updateProjectionMatrix();
    this.#draw();
  }

  end(): void {
    this.#clear();
    this.#renderer.dispose();
  }

  #go(around: number, up: number): void {
    this.#around += around;
    this.#above = Math.min(steepest, Math.max(-steepest, this.#above + up));
    this.#draw();
  }

  #draw(): void {
    const [around, above, reach] = [this.#around, this.#above, this.#reach];
    this.#camera.position
      .set(Math.sin(around) * Math.cos(above), Math.sin(above), Math.cos(around) * Math.cos(above))
      .multiplyScalar(2 * reach);
    this.#camera.lookAt(0, 0, 0);
    this.#lamp.position.copy(this.#camera.position).add(new Vector3(reach, 2 * reach, 0));
    this.#renderer.render(this.#scene, this.#camera);
  }

  #clear(): void {
    for (const mesh of this.#group.children as Mesh[]) {
      mesh.geometry.dispose();
      for (const material of [mesh.material].flat()) material.dispose();
    }
    this.#group.clear();
  }
}

function mesh_of({ positions, indices, colour }: Solid): Mesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  const [red, green, blue, alpha] = colour;
  const color = new Color(red, green, blue); // linear, as three keeps it
  if (alpha >= 1) return new Mesh(flat(geometry), new MeshStandardMaterial({ color, roughness: 0.8, side: FrontSide }));
  // Looked through, and pushed back a hair, so that it does not flicker through what it touches.
  geometry.computeVertexNormals();
  return new Mesh(
    geometry,
    new MeshStandardMaterial({
      color,
      transparent: true,
      opacity: alpha,
      side: DoubleSide,
      depthWrite: false,
      polygonOffset: true,
      polygonOffsetFactor: 2,
      polygonOffsetUnits: 2,
    }),
  );
}

function flat(geometry: BufferGeometry): BufferGeometry {
  const facets = geometry.toNonIndexed();
  facets.computeVertexNormals();
  return facets;
}

function drag(canvas: HTMLCanvasElement, turned: (dx: number, dy: number) => void): void {
  let last: PointerEvent | undefined;
  canvas.addEventListener("pointerdown", (event) => {
    last = event;
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener("pointermove", (event) => {
    if (!last) return;
    turned(event.clientX - last.clientX, event.clientY - last.clientY);
    last = event;
  });
  for (const over of ["pointerup", "pointercancel"]) canvas.addEventListener(over, () => (last = undefined));
}
