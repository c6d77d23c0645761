// What the graphics card does with the faces and edges of units.

export const kFaceVertex = `
attribute float hatch;
attribute float chosen;
varying vec3 vNormal2;
varying vec3 vAt;
varying float vHatch;
varying float vChosen;
void main() {
  vec4 world = instanceMatrix * vec4(position, 1.0);
  vNormal2 = normal;
  vAt = world.xyz;
  vHatch = hatch;
  vChosen = chosen;
  gl_Position = projectionMatrix * modelViewMatrix * world;
}`;

// Hatch lines stand 4.5 cm apart on the unit itself, so they turn with it.
export const kFaceFragment = `
uniform vec3 unit, tint, grey, ink, chalk;
varying vec3 vNormal2;
varying vec3 vAt;
varying float vHatch;
varying float vChosen;
float lines(float at) {
  float s = at / 0.045;
  float d = abs(fract(s) - 0.5);
  float w = fwidth(s);
  return 1.0 - smoothstep(0.08, 0.08 + w, 0.5 - d);
}
void main() {
  vec3 n = abs(vNormal2);
  vec2 at = n.z > 0.5 ? vAt.xy : (n.x > 0.5 ? vAt.yz : vAt.xz);
  vec3 base = vHatch > 3.5 ? grey : (vHatch > 0.5 && vHatch < 1.5 ? tint : unit);
  base = mix(base, tint, n.z > 0.5 ? 0.0 : (n.x > 0.5 ? 0.55 : 0.2));
  if (vHatch > 1.5 && vHatch < 3.5) base = mix(base, ink, 0.8 * lines(vHatch < 2.5 ? at.x + at.y : at.x - at.y));
  if (vChosen > 0.5) base = mix(base, chalk, 0.45);
  gl_FragColor = vec4(base, 1.0);
  #include <colorspace_fragment>
}`;

export const kEdgeVertex = `
attribute vec3 middle;
attribute vec3 size;
void main() {
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position * size + middle, 1.0);
}`;
export const kEdgeFragment = `
uniform vec3 ink;
void main() {
  gl_FragColor = vec4(ink, 1.0);
  #include <colorspace_fragment>
}`;
