import './opening';
import './editing';
