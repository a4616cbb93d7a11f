// The room of shapes: the forms of art with an outline and of rails that differ or
// slope, what they say of themselves, what is cut, and what all of it is called.
export {outline, sayArt} from "./outline.js";
export {rails, sayFrame} from "./rails.js";
export {cuts} from "./cuts.js";
export {name} from "./names.js";
export {hides, lengths} from "./counts.js";
