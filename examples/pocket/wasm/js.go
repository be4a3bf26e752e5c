//go:build js && wasm

package main

import (
	"reflect"
	"strings"
	"syscall/js"
)

// Objects of JavaScript carry the names of the json tags. Package encoding/json
// would do the same by text, and weigh a tenth of the page.

// field is the name of a field, and whether it is left out when it is empty.
func field(f reflect.StructField) (name string, omitted bool) {
	name, rest, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name, rest != ""
}

// fromJS fills what into points to. What is missing or of another kind stays
// zero.
func fromJS(v js.Value, into any) { decode(v, reflect.ValueOf(into).Elem()) }

func decode(v js.Value, to reflect.Value) {
	switch to.Kind() {
	case reflect.String:
		if v.Type() == js.TypeString {
			to.SetString(v.String())
		}
	case reflect.Bool:
		to.SetBool(v.Type() == js.TypeBoolean && v.Bool())
	case reflect.Int, reflect.Int64:
		if v.Type() == js.TypeNumber {
			to.SetInt(int64(v.Float()))
		}
	case reflect.Float64:
		if v.Type() == js.TypeNumber {
			to.SetFloat(v.Float())
		}
	case reflect.Pointer:
		if v.Type() == js.TypeObject {
			to.Set(reflect.New(to.Type().Elem()))
			decode(v, to.Elem())
		}
	}
	if v.Type() != js.TypeObject {
		return
	}
	switch to.Kind() {
	case reflect.Struct:
		for i := range to.NumField() {
			name, _ := field(to.Type().Field(i))
			decode(v.Get(name), to.Field(i))
		}
	case reflect.Array:
		for i := range min(to.Len(), v.Length()) {
			decode(v.Index(i), to.Index(i))
		}
	case reflect.Slice:
		to.Set(reflect.MakeSlice(to.Type(), v.Length(), v.Length()))
		for i := range v.Length() {
			decode(v.Index(i), to.Index(i))
		}
	case reflect.Map:
		to.Set(reflect.MakeMap(to.Type()))
		keys := js.Global().Get("Object").Call("keys", v)
		for i := range keys.Length() {
			value := reflect.New(to.Type().Elem()).Elem()
			decode(v.Get(keys.Index(i).String()), value)
			to.SetMapIndex(reflect.ValueOf(keys.Index(i).String()), value)
		}
	}
}

// toJS makes plain objects and arrays.
func toJS(v any) any { return encode(reflect.ValueOf(v)) }

func encode(v reflect.Value) any {
	switch v.Kind() {
	case reflect.String:
		return v.String()
	case reflect.Bool:
		return v.Bool()
	case reflect.Int, reflect.Int64:
		return float64(v.Int())
	case reflect.Float64:
		return v.Float()
	case reflect.Pointer:
		if v.IsNil() {
			return nil
		}
		return encode(v.Elem())
	case reflect.Slice:
		list := make([]any, v.Len())
		for i := range list {
			list[i] = encode(v.Index(i))
		}
		return list
	case reflect.Map:
		object := map[string]any{}
		for it := v.MapRange(); it.Next(); {
			object[it.Key().String()] = encode(it.Value())
		}
		return object
	case reflect.Struct:
		object := map[string]any{}
		fields(v, object)
		return object
	}
	return nil
}

func fields(v reflect.Value, object map[string]any) {
	for i := range v.NumField() {
		f := v.Type().Field(i)
		name, omitted := field(f)
		switch {
		case f.Anonymous:
			fields(v.Field(i), object)
		case name == "" || omitted && v.Field(i).IsZero():
		default:
			object[name] = encode(v.Field(i))
		}
	}
}
