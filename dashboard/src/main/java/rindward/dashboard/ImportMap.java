package rindward.dashboard;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.URI;
import java.util.Comparator;
import java.util.Map;

/**
 * Where a module's imports lead, as a browser would find them: the index's import map for a
 * library's name, the module's own folder for a path.
 *
 * @param addresses by name; one that ends in a slash stands for everything under it
 */
record ImportMap(Map<String, String> addresses) {

  ImportMap {
    addresses = Map.copyOf(addresses);
  }

  /**
   * Reads what stands between the tags of an import map.
   *
   * @throws IllegalStateException when it is not one
   */
  static ImportMap parse(String json) {
    try {
      Map<String, Map<String, String>> map =
          JsonMapper.builder().build().readValue(json, new TypeReference<>() {});
      return new ImportMap(map.getOrDefault("imports", Map.of()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the index's import map cannot be read", e);
    }
  }

  /**
   * Returns the address of what a module imports.
   *
   * @param from the module's own address
   * @throws IllegalStateException when it is a name that the map does not have
   */
  String resolve(String from, String imported) {
    if (imported.startsWith(".") || imported.startsWith("/")) {
      return URI.create(from).resolve(imported).getPath();
    }
    return addresses.entrySet().stream()
        .filter(
            known ->
                known.getKey().equals(imported)
                    || (known.getKey().endsWith("/") && imported.startsWith(known.getKey())))
        .max(Comparator.comparingInt(known -> known.getKey().length()))
        .map(known -> known.getValue() + imported.substring(known.getKey().length()))
        .orElseThrow(
            () ->
                new IllegalStateException(
                    from + " imports '" + imported + "' but the import map has no such name"));
  }
}
