// The solid, turned by buttons or touch. Loaded after the figures: three is most of the page's weight.
import {
  AmbientLight, BackSide, BufferAttribute, BufferGeometry, Box3, Color, DirectionalLight, DoubleSide, FrontSide, Group, Mesh,
  MeshBasicMaterial, MeshStandardMaterial, OrthographicCamera, Plane, Scene, Vector3, WebGLRenderer,
} from "three";
import type { Solid } from "./outline";

export interface Turntable {
  turn(by: number): void;
  tip(by: number): void;
  cut(is_cut: boolean): void;
  show(solids: Solid[]): void;
  fit(): void;
  end(): void;
}

const soap = new Color(0xd9b382);
const sliced = new Color(0x8a5a2b);
const mould = new Color(0x6b7a86);

export function turntable(canvas: HTMLCanvasElement): Turntable {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
  const scene = new Scene();
  const group = new Group();
  scene.add(group, new AmbientLight(0xffffff, 1.4));
  const lamp = new DirectionalLight(0xffffff, 2.2);
  scene.add(lamp);
  const camera = new OrthographicCamera(-1, 1, 1, -1, -10, 10);
  const knife = new Plane(new Vector3(0, 0, -1), 0);
  let [around, above, is_cut, reach] = [0.5, 0.45, false, 1];

  const draw = () => {
    camera.position.set(Math.sin(around) * Math.cos(above), Math.sin(above), Math.cos(around) * Math.cos(above)).multiplyScalar(2 * reach);
    camera.lookAt(0, 0, 0);
    lamp.position.copy(camera.position).add(new Vector3(reach, 2 * reach, 0));
    renderer.render(scene, camera);
  };
  const fit = () => {
    const { clientWidth: w, clientHeight: h } = canvas;
    if (!w || !h) return;
    renderer.setSize(w, h, false);
    const across = Math.max(1, w / h);
    Object.assign(camera, { left: -reach * across, right: reach * across, top: reach * Math.max(1, h / w), bottom: -reach * Math.max(1, h / w), near: -10 * reach, far: 10 * reach });
    camera.updateProjectionMatrix();
    draw();
  };
  const clear = () => {
    for (const mesh of group.children as Mesh[]) {
      mesh.geometry.dispose();
      for (const material of [mesh.material].flat()) material.dispose();
    }
    group.clear();
  };
  const show = (solids: Solid[]) => {
    clear();
    group.position.set(0, 0, 0);
    group.updateMatrixWorld();
    const box = new Box3();
    for (const solid of solids)
      for (const mesh of meshes_of(solid, is_cut ? [knife] : [])) {
        group.add(mesh);
        box.expandByObject(mesh);
      }
    const middle = box.getCenter(new Vector3());
    group.position.copy(middle).negate();
    reach = box.getSize(new Vector3()).length() * 0.56;
    fit();
  };
  let shown: Solid[] = [];
  drag(canvas, (dx, dy) => {
    around -= dx * 0.01;
    above = Math.min(1.5, Math.max(-1.5, above + dy * 0.01));
    draw();
  });
  return {
    turn: (by) => ((around += by), draw()),
    tip: (by) => ((above = Math.min(1.5, Math.max(-1.5, above + by))), draw()),
    cut: (cut) => ((is_cut = cut), show(shown)),
    show: (solids) => show((shown = solids)),
    fit,
    end: () => (clear(), renderer.dispose()),
  };
}

/** A cut solid shows the inside of its far wall in one flat colour, which reads as the cut face. */
function meshes_of(solid: Solid, clippingPlanes: Plane[]): Mesh[] {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(solid.positions, 3));
  geometry.setIndex(new BufferAttribute(solid.indices, 1));
  if (solid.name === "cavity") {
    geometry.computeVertexNormals();
    const glass = new MeshStandardMaterial({ color: mould, transparent: true, opacity: 0.28, side: DoubleSide, depthWrite: false, clippingPlanes, polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 });
    return [new Mesh(geometry, glass)];
  }
  // The wall of the cavity lies in the wall of its filling: pushed back a hair, it does not flicker through.
  const flat = geometry.toNonIndexed();
  flat.computeVertexNormals();
  const outside = new MeshStandardMaterial({ color: soap, roughness: 0.8, side: FrontSide, clippingPlanes });
  const inside = new MeshBasicMaterial({ color: sliced, side: BackSide, clippingPlanes });
  return clippingPlanes.length ? [new Mesh(flat, outside), new Mesh(flat, inside)] : [new Mesh(flat, outside)];
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
