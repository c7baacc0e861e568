export { figure } from '../text';
