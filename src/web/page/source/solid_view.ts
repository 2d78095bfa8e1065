// The solid, turned by buttons or touch. Loaded after the figures: three is most of the page's weight.
import {
  AmbientLight, BufferAttribute, BufferGeometry, Box3, Color, DirectionalLight, DoubleSide, FrontSide, Group, Mesh, MeshStandardMaterial,
  OrthographicCamera, Scene, Vector3, WebGLRenderer,
} from "three";
import type { Solid } from "./outline";

export interface Turntable {
  turn(by: number): void;
  tip(by: number): void;
  show(solids: Solid[]): void;
  fit(): void;
  end(): void;
}

export function turntable(canvas: HTMLCanvasElement): Turntable {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
  const scene = new Scene();
  const group = new Group();
  scene.add(group, new AmbientLight(0xffffff, 1.4));
  const lamp = new DirectionalLight(0xffffff, 2.2);
  scene.add(lamp);
  const camera = new OrthographicCamera(-1, 1, 1, -1, -10, 10);
  let [around, above, reach] = [0.5, 0.45, 1];

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
    for (const solid of solids) {
      const mesh = mesh_of(solid);
      group.add(mesh);
      box.expandByObject(mesh);
    }
    const middle = box.getCenter(new Vector3());
    group.position.copy(middle).negate();
    reach = box.getSize(new Vector3()).length() * 0.56;
    fit();
  };
  drag(canvas, (dx, dy) => {
    around -= dx * 0.01;
    above = Math.min(1.5, Math.max(-1.5, above + dy * 0.01));
    draw();
  });
  return {
    turn: (by) => ((around += by), draw()),
    tip: (by) => ((above = Math.min(1.5, Math.max(-1.5, above + by))), draw()),
    show,
    fit,
    end: () => (clear(), renderer.dispose()),
  };
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
    new MeshStandardMaterial({ color, transparent: true, opacity: alpha, side: DoubleSide, depthWrite: false, polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 }),
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
