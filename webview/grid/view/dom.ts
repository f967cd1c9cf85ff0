export { make, setAttribute } from '../../page/dom'
