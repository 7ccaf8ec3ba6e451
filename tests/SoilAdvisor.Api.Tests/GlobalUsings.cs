global using System.Globalization;
global using System.Net;
global using System.Text;
global using System.Text.Json;
global using System.Text.Json.Nodes;
