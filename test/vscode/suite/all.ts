import './opening';
import './editing';
import './language';
import './features';
import './other-sheets';
import './broken';
import './tables';
import './large';
