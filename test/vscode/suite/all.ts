import './opening';
import './editing';
import './language';
import './broken';
import './large';
